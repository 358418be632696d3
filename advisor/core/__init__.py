"""What the layers pass to each other, and nothing else: the case, the world, the model, findings, options, plans.

Everything here is frozen and free of the screen, the engine and the file system.
"""
