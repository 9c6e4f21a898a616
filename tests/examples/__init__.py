"""The palette and the designs that come with the program."""
