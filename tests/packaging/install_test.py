"""What `cmake --install` puts where: exactly what stands in installed.txt, held to the standards by their own programs."""
import configparser
import gzip
import os
import pathlib
import subprocess
import sys
import tempfile

BUILD, VERSION = sys.argv[1:]
HERE = pathlib.Path(__file__).parent
faults = []


def hold(true, words):
    if not true:
        faults.append(words)


def run(*command, **more):
    return subprocess.run(command, capture_output=True, text=True, **more)


def quiet(*command, **more):
    """A checker that succeeds and says nothing."""
    done = run(*command, **more)
    hold(done.returncode == 0 and not done.stderr.strip(), f"{' '.join(map(str, command))}: {done.stdout}{done.stderr}")
    return done


with tempfile.TemporaryDirectory() as place:
    done = run("cmake", "--install", BUILD, "--prefix", "/usr", env={**os.environ, "DESTDIR": place})
    hold(done.returncode == 0, done.stderr)
    usr = pathlib.Path(place, "usr")
    found = sorted(str(file.relative_to(usr)) for file in usr.rglob("*") if not file.is_dir())
    wanted = sorted((HERE / "installed.txt").read_text().split())
    for file in sorted(set(wanted) - set(found)):
        hold(False, f"not installed: {file}")
    for file in sorted(set(found) - set(wanted)):
        hold(False, f"installed, and not in installed.txt: {file}")
    outside = [file for file in pathlib.Path(place).rglob("*") if not file.is_dir() and usr not in file.parents]
    hold(not outside, f"installed outside of the prefix: {outside}")
    if faults:
        sys.exit("\n".join(faults))

    share = usr / "share"
    desktop = share / "applications/org.wardchalk.wardchalk.desktop"
    metainfo = share / "metainfo/org.wardchalk.wardchalk.metainfo.xml"
    quiet("desktop-file-validate", desktop)
    checked = run("appstreamcli", "validate", "--no-net", "--pedantic", "--no-color", metainfo)
    hold(checked.returncode == 0, checked.stdout + checked.stderr)
    hold(f'<release version="{VERSION}"' in metainfo.read_text(), "the AppStream page does not name the version")
    for page in share.glob("man/man*/*.gz"):
        # in UTF-8 and 80 columns, as lintian asks for it
        quiet("man", "--warnings", "-E", "UTF-8", "-l", "-Tutf8", "-Z", page, env={**os.environ, "LC_ALL": "C.UTF-8", "MANWIDTH": "80"})
        hold(f"Wardchalk {VERSION}" in gzip.open(page, "rt").read(), f"{page.name} does not name the version")
    hold(gzip.open(share / "doc/wardchalk/changelog.gz", "rt").readline() == f"wardchalk ({VERSION}) unstable; urgency=medium\n",
         "the changelog does not begin with the version")
    hold(subprocess.run(["dpkg-parsechangelog", "-l", "-"], input=gzip.open(share / "doc/wardchalk/changelog.gz").read(),
                        capture_output=True).stderr == b"", "dpkg-parsechangelog does not understand the changelog")

    # A double click on a case opens this program, and both have an icon.
    entry = configparser.RawConfigParser(strict=True)
    entry.optionxform = str
    entry.read(desktop)
    entry = entry["Desktop Entry"]
    hold(entry["Exec"] == "wardchalk %f", f"Exec={entry['Exec']}")
    hold((share / f"icons/hicolor/48x48/apps/{entry['Icon']}.png").exists(), f"Icon={entry['Icon']}: no such icon")
    quiet("update-mime-database", share / "mime", env={**os.environ, "XDG_DATA_DIRS": str(share)})
    globs = (share / "mime/globs2").read_text().split()
    case_type = entry["MimeType"].rstrip(";")
    hold(f"50:{case_type}:*.wardchalk" in globs, f"no name of a file means {case_type}: {globs}")
    hold((share / f"icons/hicolor/48x48/mimetypes/{case_type.replace('/', '-')}.png").exists(), f"{case_type}: no icon")
    hold(any(line.split(":", 1)[0] == case_type for line in (share / "mime/icons").read_text().split()), "no icon named for it")

    # The installed console works out every installed example.
    verdicts = {"avocet-pounds": "SAFE", "curlew-as-needed": "SAFE", "dotterel-powder": "SAFE", "godwit-rate": "SAFE",
                "ortolan-infusion-drops": "SAFE", "plover": "SAFE", "whimbrel-weekly": "SAFE", "wren-tablets": "SAFE",
                "dunlin-too-little": "ASK BEFORE GIVING", "knot-too-young": "NOT COVERED", "lapwing-too-much": "UNSAFE",
                "redshank-height-missing": "NO VERDICT"}
    examples = sorted((share / "doc/wardchalk/examples").glob("*.wardchalk"))
    hold([case.stem for case in examples] == sorted(verdicts), "an example has no verdict here, or is not there")
    for case in examples:
        done = run(usr / "bin/wardchalk-console", "check", case)
        lines = [line for line in done.stdout.splitlines()[:4] if line.startswith(verdicts[case.stem])]
        hold(done.returncode == 0 and lines, f"{case.name}: not {verdicts[case.stem]}:\n{done.stdout[:300]}{done.stderr}")

for fault in faults:
    print(fault)
sys.exit(1 if faults else 0)
