"""What the frames of the saw share: where they go, and what lies in their rabbet."""
