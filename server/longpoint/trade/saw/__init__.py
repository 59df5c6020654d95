"""What is asked at the saw: settings, lengths and which way the cut goes."""
