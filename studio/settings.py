"""Settings, in one file. Every value comes from the environment through readers that complain well, or has a default
that lets a fresh clone run."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Any

from csp.constants import NONE, SELF

from studio import env

# The forecast's matrices are small: threads of the linear algebra only get in each other's way. Set before it loads.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

BASE_DIR = Path(__file__).resolve().parent.parent
DATA_DIR = Path(env.text("DATA_DIR", str(BASE_DIR / "data")))

DEBUG = env.yes("DEBUG", False)
SECRET_KEY = env.secret("SECRET_KEY") or env.secret_key(DATA_DIR)
PUBLIC_URL = env.text("PUBLIC_URL", f"http://127.0.0.1:{env.whole('PORT', 8000)}").rstrip("/")
ALLOWED_HOSTS = env.hosts("ALLOWED_HOSTS", PUBLIC_URL)
CSRF_TRUSTED_ORIGINS = [PUBLIC_URL]

DATABASES = {"default": env.database(env.text("DATABASE_URL", f"sqlite:///{DATA_DIR / 'studio.sqlite3'}"))}
DEFAULT_AUTO_FIELD = "django.db.models.BigAutoField"
REDIS_URL = env.text("REDIS_URL", "")

INSTALLED_APPS = [
    "django.contrib.auth",
    "django.contrib.contenttypes",
    "django.contrib.sessions",
    "django.contrib.messages",
    "django.contrib.staticfiles",
    "anymail",
    "csp",
    "studio",
    "aftercare",
]
MIDDLEWARE = [
    "django.middleware.security.SecurityMiddleware",
    "whitenoise.middleware.WhiteNoiseMiddleware",
    "csp.middleware.CSPMiddleware",
    "django.contrib.sessions.middleware.SessionMiddleware",
    "django.middleware.locale.LocaleMiddleware",
    "django.middleware.common.CommonMiddleware",
    "django.middleware.csrf.CsrfViewMiddleware",
    "django.contrib.auth.middleware.AuthenticationMiddleware",
    "studio.views.sign_in.SignInFirst",
    "django.contrib.messages.middleware.MessageMiddleware",
    "django.middleware.clickjacking.XFrameOptionsMiddleware",
]
ROOT_URLCONF = "studio.urls"
WSGI_APPLICATION = "studio.wsgi.application"
TEMPLATES: list[dict[str, Any]] = [
    {
        "BACKEND": "django.template.backends.django.DjangoTemplates",
        "DIRS": [BASE_DIR / "templates"],
        "OPTIONS": {
            "context_processors": [
                "django.template.context_processors.request",
                "django.contrib.auth.context_processors.auth",
                "django.contrib.messages.context_processors.messages",
                "studio.access.standing",
            ],
        },
    },
]

AUTH_USER_MODEL = "studio.User"
PASSWORD_HASHERS = [
    "django.contrib.auth.hashers.Argon2PasswordHasher",
    "django.contrib.auth.hashers.PBKDF2PasswordHasher",
]
AUTH_PASSWORD_VALIDATORS = [
    {"NAME": "django.contrib.auth.password_validation.UserAttributeSimilarityValidator"},
    {"NAME": "django.contrib.auth.password_validation.MinimumLengthValidator", "OPTIONS": {"min_length": 10}},
    {"NAME": "django.contrib.auth.password_validation.CommonPasswordValidator"},
]
LOGIN_URL = "sign_in"
CSRF_FAILURE_VIEW = "studio.views.kept.too_old"
LOGIN_REDIRECT_URL = "home"
LOGOUT_REDIRECT_URL = "sign_in"
SESSION_COOKIE_AGE = 14 * 24 * 3600
SESSION_COOKIE_HTTPONLY = True

_secure = PUBLIC_URL.startswith("https://")
SESSION_COOKIE_SECURE = CSRF_COOKIE_SECURE = _secure
SECURE_SSL_REDIRECT = env.yes("SSL_REDIRECT", _secure)
# A redirected POST comes as a GET or not at all, and a gateway on this machine calls without a certificate.
SECURE_REDIRECT_EXEMPT = [r"^hooks/"]
SECURE_HSTS_SECONDS = env.whole("HSTS_SECONDS", 31_536_000 if _secure else 0)
SECURE_HSTS_INCLUDE_SUBDOMAINS = SECURE_HSTS_PRELOAD = _secure
SECURE_PROXY_SSL_HEADER = ("HTTP_X_FORWARDED_PROTO", "https") if env.yes("BEHIND_PROXY", False) else None
SECURE_REFERRER_POLICY = "same-origin"
X_FRAME_OPTIONS = "DENY"
CONTENT_SECURITY_POLICY = {
    "DIRECTIVES": {
        "default-src": [NONE],
        "script-src": [SELF],
        "style-src": [SELF],
        "img-src": [SELF, "data:"],
        "font-src": [SELF],
        "manifest-src": [SELF],
        "form-action": [SELF],
        "base-uri": [NONE],
        "frame-ancestors": [NONE],
    },
}

# One process shares its own memory; several share Redis, in a database apart from the broker's: emptying the cache
# must not empty the queue. Sign-in limits live here.
_cache_options = {"socket_timeout": 2, "socket_connect_timeout": 2, "health_check_interval": 30}
CACHES: dict[str, Any] = {
    "default": {
        "BACKEND": "studio.cache.ForgetfulRedis",
        "LOCATION": env.text("CACHE_URL", env.next_redis(REDIS_URL)),
        "OPTIONS": _cache_options,
    }
    if REDIS_URL
    else {"BACKEND": "django.core.cache.backends.locmem.LocMemCache"}
}

LANGUAGE_CODE = "en"
LANGUAGES = [("en", "English"), ("es", "Español")]
LOCALE_PATHS = [BASE_DIR / "studio" / "locale"]
TIME_ZONE = "UTC"  # the database's; what people see is the studio's wall clock
USE_TZ = True

STATIC_URL = "static/"
STATIC_ROOT = DATA_DIR / "static"
WHITENOISE_USE_FINDERS = True
WHITENOISE_AUTOREFRESH = DEBUG

DATA_UPLOAD_MAX_MEMORY_SIZE = 30 * 1024 * 1024
FILE_UPLOAD_MAX_MEMORY_SIZE = 30 * 1024 * 1024

# E-mail: EMAIL_URL for SMTP, or EMAIL_BACKEND and ANYMAIL_… for a provider (see deploy/env.example).
globals().update(env.email(env.text("EMAIL_URL", "console:")))
if env.text("EMAIL_BACKEND", ""):
    EMAIL_BACKEND = env.text("EMAIL_BACKEND", "")
ANYMAIL = env.prefixed("ANYMAIL_")
DEFAULT_FROM_EMAIL = env.text("DEFAULT_FROM_EMAIL", "studio@localhost")

AFTERCARE: dict[str, Any] = {
    "SMS": {
        "TRANSPORT": env.text("SMS_TRANSPORT", "aftercare.transports.console.Console"),
        "OPTIONS": env.options("SMS_OPTION_"),
    },
    "EMAIL": {
        "TRANSPORT": "aftercare.transports.email.Email",
        "OPTIONS": {name.lower(): value for name, value in env.prefixed("EMAIL_OPTION_").items()},
    },
    "REHEARSAL": {"TRANSPORT": "aftercare.transports.phone.Phone", "OPTIONS": {}},
}

# Connections to carriers that stay open, by name: SMPP_NAME=smpp://…; one process each (manage.py run_smpp NAME).
AFTERCARE_BINDS = env.binds()

# Celery carries no promise: a task says “look at these rows”. These settings lose least; see DEVELOPERS.md.
CELERY_BROKER_URL = REDIS_URL or "memory://"
CELERY_BROKER_TRANSPORT_OPTIONS = {
    "visibility_timeout": 300,  # seconds until an unacknowledged task is run again: far above every time limit
    "unacked_restore_interval": 5,
    "unacked_restore_throttle": 1,
    "socket_timeout": env.whole("REDIS_SOCKET_TIMEOUT", 2, least=2),  # a worker's blocking read wants 10
    "socket_connect_timeout": 2,
    "socket_keepalive": True,
    "retry_on_timeout": False,
    "max_retries": 0,
}
CELERY_BROKER_CONNECTION_RETRY_ON_STARTUP = True
CELERY_TASK_ACKS_LATE = True
CELERY_TASK_REJECT_ON_WORKER_LOST = True
CELERY_TASK_IGNORE_RESULT = True
CELERY_TASK_PUBLISH_RETRY = False
CELERY_TASK_TIME_LIMIT = 120  # what needs longer ends its round in time and goes on in the next: see aftercare/tasks.py
CELERY_TASK_SOFT_TIME_LIMIT = 100
CELERY_WORKER_PREFETCH_MULTIPLIER = 1
CELERY_WORKER_CANCEL_LONG_RUNNING_TASKS_ON_CONNECTION_LOSS = False
# So many tasks share a connection; studio/celery.py sees to it that one which the database closed is noticed.
CELERY_DB_REUSE_MAX = 1000
CELERY_TIMEZONE = "UTC"
CELERY_BEAT_SCHEDULE = {
    "send_due": {"task": "aftercare.send_due", "schedule": 1.0, "options": {"expires": 5}},
    "run_imports": {"task": "aftercare.run_imports", "schedule": 2.0, "options": {"expires": 5}},
    "poll_feeds": {"task": "aftercare.poll_feeds", "schedule": 60.0, "options": {"expires": 50}},
    # Each studio is fitted once a night, by its own clock: a look that finds nothing to do costs a query or two.
    "refit": {"task": "aftercare.refit", "schedule": 600.0, "options": {"expires": 500}},
}

LOGGING = {
    "version": 1,
    "disable_existing_loggers": False,
    "formatters": {"plain": {"format": "{asctime} {levelname} {name}: {message}", "style": "{"}},
    "filters": {"without_links": {"()": "studio.logs.WithoutLinks"}},
    "handlers": {"stderr": {"class": "logging.StreamHandler", "formatter": "plain", "filters": ["without_links"]}},
    "root": {"handlers": ["stderr"], "level": env.choice("LOG_LEVEL", "INFO", ["DEBUG", "INFO", "WARNING", "ERROR"])},
}
