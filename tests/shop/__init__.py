"""The shop's server."""
