"""`advisor rules check`: the rule base looked over as a whole."""
