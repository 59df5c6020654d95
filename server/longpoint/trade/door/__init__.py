"""Questions answered in the door shop: building the doors themselves."""
