"""Faults that the service must survive, against real servers on private ports.

``python tests/faults/all.py [NAME …]`` runs them and prints a table; ``tests/flow/test_faults.py`` runs some once and
small. Each is a function ``(folder, small) -> (counts, what must not be)``: at_work.py has a service for it to happen
to, ledger.py judges, by the carrier's, the mail server's or the provider's own count.
"""
