"""The shop's server: its people, their devices and the documents they share."""
