"""What goes on with a talk: bare numbers, corrections, going back."""
