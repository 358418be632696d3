"""The work sheet on paper: the plan with boxes to tick, and templates at their true size."""
