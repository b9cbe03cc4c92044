"""Files that a command writes: whole, or not at all."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Iterable
from pathlib import Path

from django.core.management.base import CommandError


def write(file: Path, text: Iterable[str]) -> None:
    """Write ASCII text piece by piece. A file that stood there is replaced when all is written, or stays as it was.

    A link stays one: what it points to is written.
    Raises CommandError with the cure where the file cannot be written.
    """
    try:
        if file.exists() and not file.is_file():
            # A pipe or a device cannot be replaced, only written to.
            with file.open("w", encoding="ascii") as stream:
                stream.writelines(text)
        else:
            _replace(Path(os.path.realpath(file)), text)  # /dev/stdout is a link, too
    except OSError as error:
        raise CommandError(f"{file} cannot be written ({error.strerror}): name another file for --out.") from error


def _replace(file: Path, text: Iterable[str]) -> None:
    handle, temporary = tempfile.mkstemp(dir=file.parent, prefix=f".{file.name}-")
    try:
        with open(handle, "w", encoding="ascii") as stream:
            stream.writelines(text)
        os.chmod(temporary, file.stat().st_mode & 0o777 if file.exists() else 0o666 & ~_umask())
        os.replace(temporary, file)
    except BaseException:
        os.unlink(temporary)
        raise


def _umask() -> int:
    mask = os.umask(0o022)
    os.umask(mask)
    return mask
