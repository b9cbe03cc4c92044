"""A migration that no test applies."""
