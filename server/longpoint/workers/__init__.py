"""Processes that compute, so that whoever computes long keeps nobody else waiting."""
