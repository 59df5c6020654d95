"""What is asked at the yard: what lumber really measures and how much to buy."""
