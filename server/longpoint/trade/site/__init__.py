"""What is asked on site: the opening, the hinges and the hardware."""
