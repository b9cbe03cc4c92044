from __future__ import annotations

import sys
from pathlib import Path

from deploy.testing import SystemPackage, read_example


def test_a_system_package_is_there_when_any_of_its_files_is(tmp_path: Path) -> None:
    (tmp_path / "15").mkdir()
    (tmp_path / "15" / "initdb").touch()

    assert not SystemPackage("python", (sys.executable,)).missing()
    assert not SystemPackage("postgresql", ("no-such-program", f"{tmp_path}/*/initdb")).missing()
    assert SystemPackage("postgresql", ("no-such-program", f"{tmp_path}/*/pg_ctl")).missing()


def test_settings_are_read_and_what_is_for_people_is_passed_over(tmp_path: Path) -> None:
    (tmp_path / "env").write_text("# for people\n\nPORT=8000\n#OFF=1\nURL=postgres://a:b@c/d?x=y\nEMPTY=\n")

    assert read_example(tmp_path / "env") == {"PORT": "8000", "URL": "postgres://a:b@c/d?x=y", "EMPTY": ""}
