"""What a page shows, apart from the view that shows it. Reads only."""
