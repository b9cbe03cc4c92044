"""What is known of each language, as phrases: see `aftercare.core.reading.phrases` for how they are written."""
