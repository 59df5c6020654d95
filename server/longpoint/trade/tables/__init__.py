"""Published tables, a module each, with the source at the top."""
