"""One command a file; the file's name is the command's, and it holds `command`."""
