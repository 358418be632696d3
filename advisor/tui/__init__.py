"""The full-screen interface: one screen for each stage of the flow. Nothing else imports it; only it imports Textual.

    1 Cases -> 2 Questions -> 3 Options -> 4 Plan

All state is in the session; a screen only shows it, so leaving and coming back loses nothing.
"""
