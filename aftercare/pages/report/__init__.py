"""The owner's and the artists' figures as pages and spreadsheets show them: a period, tables, and pictures of them."""
