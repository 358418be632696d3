"""Tests of the full screen, in plain text: pictures of screens change with each version of the library."""
