from django.apps import AppConfig


class AftercareConfig(AppConfig):
    """Everything that happens because a visit happened."""

    name = "aftercare"
    default_auto_field = "django.db.models.BigAutoField"

    def ready(self) -> None:
        # Registering the checks and listening to the mail providers and Celery is what loading the app is for.
        import aftercare.checks  # noqa: F401, PLC0415
        import aftercare.receivers  # noqa: F401, PLC0415
        import aftercare.standby  # noqa: F401, PLC0415
