"""The plans worth offering for a whole garment: an option graph, an exact search over it, names for what is found."""
