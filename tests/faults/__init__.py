"""Faults that the service must survive, against real servers on private ports.

``python tests/faults/all.py [NAME …]`` runs them and prints a table. Each is a function ``(folder, small) -> Result``
in its REGISTRY; ``tests/flow/test_faults.py`` runs some once and small. The carrier's, the mail server's or the
provider's own count, by address or by our reference, is the judge.
"""
