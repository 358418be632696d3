"""Help for those who write rules: frames of new cards to fill in, and the page that tells what rules there are.

A frame is a file that loads, says of every part what belongs there, and never fires. `advisor rules check` refuses it
until the last FILL is gone.
"""
