from django.apps import AppConfig


class StudioConfig(AppConfig):
    """The studio's own records."""

    name = "studio"
    default_auto_field = "django.db.models.BigAutoField"

    def ready(self) -> None:
        import studio.postgres  # noqa: F401  loading it is enough
