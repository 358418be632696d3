"""Frames of new rules, fixes, garments and questions, and the page that tells all rules."""
