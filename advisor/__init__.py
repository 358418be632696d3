"""A rule-based advisor for people who alter garments at a domestic machine."""

__version__ = "0.1.0"
