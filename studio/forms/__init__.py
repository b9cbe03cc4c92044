"""Forms: what people type, before the records have their say."""
