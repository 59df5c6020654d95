"""The HTTP API: the same questions and answers as on the phone. It computes and keeps nothing."""
