"""Starting and testing the service from a fresh clone: the standard library alone, as nothing is installed yet."""
