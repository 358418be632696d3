"""The interview: which question comes next, and reading what is typed. The screens and the plain mode both use it."""
