"""The tests. A package, because something in the environment installs another one of this name."""
