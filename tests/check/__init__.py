"""The checker of the rule base, proved on rule bases broken in one place."""
