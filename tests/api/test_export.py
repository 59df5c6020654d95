"""`longpoint export DIR`: the static site, written with care for what is already there."""

import shutil
import threading
import urllib.request
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest

from longpoint import cli, front


def files(folder: Path) -> dict[str, bytes]:
    found = [path for path in folder.rglob("*") if path.is_file()]
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in found}


def site(folder: Path) -> dict[str, bytes]:
    """What a host serves: no dot-files, and no ready compressed copies."""
    kept = {name: body for name, body in files(folder).items() if not name.startswith(".")}
    return {name: body for name, body in kept.items() if not name.endswith((".br", ".gz"))}


def test_the_whole_front_end_is_written(tmp_path: Path) -> None:
    assert cli.main(["export", str(tmp_path / "new" / "site")]) == 0
    written = site(tmp_path / "new" / "site")
    assert written == site(front.STATIC)
    assert "index.html" in written


def test_a_plain_file_server_can_serve_it(tmp_path: Path) -> None:
    cli.main(["export", str(tmp_path)])
    handler = partial(SimpleHTTPRequestHandler, directory=str(tmp_path))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        threading.Thread(target=server.serve_forever).start()
        try:
            for name, body in site(tmp_path).items():
                with urllib.request.urlopen(
                    f"http://127.0.0.1:{server.server_port}/{name}"
                ) as response:
                    assert response.read() == body
        finally:
            server.shutdown()


def test_a_folder_with_something_else_in_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "letter.txt").write_text("mine")
    assert cli.main(["export", str(tmp_path)]) == 1
    assert "not empty" in capsys.readouterr().err
    assert files(tmp_path) == {"letter.txt": b"mine"}


def test_a_file_in_the_way(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "site").write_text("mine")
    assert cli.main(["export", str(tmp_path / "site")]) == 1
    assert "is a file" in capsys.readouterr().err
    assert (tmp_path / "site").read_text() == "mine"


def test_a_folder_that_cannot_be_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "site").write_text("a file where a folder would have to be")
    assert cli.main(["export", str(tmp_path / "site" / "below")]) == 1
    assert str(tmp_path) in capsys.readouterr().err


def test_an_earlier_export_is_renewed(tmp_path: Path) -> None:
    """What the last export wrote goes; what the host's owner added stays."""
    cli.main(["export", str(tmp_path)])
    record = tmp_path / ".longpoint-export"
    old = tmp_path / "assets" / "app-0123456789ab.js"
    old.write_text("an older version")
    record.write_text(record.read_text() + "assets/app-0123456789ab.js\n")
    (tmp_path / "CNAME").write_text("trim.example")
    assert cli.main(["export", str(tmp_path)]) == 0
    assert not old.exists()
    assert site(tmp_path) == site(front.STATIC) | {"CNAME": b"trim.example"}


def test_a_record_that_points_elsewhere_deletes_nothing_there(tmp_path: Path) -> None:
    outside = tmp_path / "outside.txt"
    outside.write_text("mine")
    inside = tmp_path / "site"
    cli.main(["export", str(inside)])
    (inside / ".longpoint-export").write_text(f"../outside.txt\n{outside}\n")
    assert cli.main(["export", str(inside)]) == 0
    assert outside.read_text() == "mine"


def test_a_link_to_another_folder_is_not_followed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Writing the new files or deleting the old ones behind it would change what isn't ours."""
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (elsewhere / "app-0123456789ab.js").write_text("mine")
    inside = tmp_path / "site"
    cli.main(["export", str(inside)])
    record = inside / ".longpoint-export"
    record.write_text(record.read_text() + "assets/app-0123456789ab.js\n")
    shutil.rmtree(inside / "assets")
    (inside / "assets").symlink_to(elsewhere)
    assert cli.main(["export", str(inside)]) == 1
    assert "assets is a link" in capsys.readouterr().err
    assert files(elsewhere) == {"app-0123456789ab.js": b"mine"}


@pytest.mark.parametrize("name", ["index.html", "assets/app-0123456789ab.js", ".longpoint-export"])
def test_a_link_to_a_file_elsewhere_is_replaced_or_taken_away(tmp_path: Path, name: str) -> None:
    inside = tmp_path / "site"
    cli.main(["export", str(inside)])
    record = inside / ".longpoint-export"
    record.write_text(record.read_text() + "assets/app-0123456789ab.js\n")
    outside = tmp_path / "outside"
    outside.write_text(record.read_text())
    (inside / name).unlink(missing_ok=True)
    (inside / name).symlink_to(outside)
    before = outside.read_bytes()
    assert cli.main(["export", str(inside)]) == 0
    assert outside.read_bytes() == before
    assert not (inside / name).is_symlink()
    assert site(inside) == site(front.STATIC)


@pytest.mark.parametrize("content", [b"\xff\xfe\x00binary", b"assets/\x00.js\n"])
def test_a_record_that_is_none(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: bytes
) -> None:
    (tmp_path / ".longpoint-export").write_bytes(content)
    assert cli.main(["export", str(tmp_path)]) == 1
    assert "not the list" in capsys.readouterr().err
    assert files(tmp_path) == {".longpoint-export": content}
