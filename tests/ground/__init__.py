"""Tests of the ground; a package, so that what its tests share is found whatever else is called `tests`."""
