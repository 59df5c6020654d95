"""What plans of sticks and of sheets have in common: units, worth, counted work, better answers."""
