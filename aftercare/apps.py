from django.apps import AppConfig


class AftercareConfig(AppConfig):
    """Everything that happens because a visit happened."""

    name = "aftercare"
    default_auto_field = "django.db.models.BigAutoField"

    def ready(self) -> None:
        # Registering the checks and listening to the mail providers and Celery is what loading the app is for.
        import aftercare.checks
        import aftercare.receivers
        import aftercare.standby  # noqa: F401
