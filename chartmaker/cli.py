"""The command line's edge: the window, or a command, and what went wrong told in a sentence.

Exit status 0: done; 1: a report with a finding of severity `stop`; 2: the file or the call was wrong.
It imports little: the window opens in hardly more time than its libraries take to load.
"""

import gc
import os
import sys
from collections.abc import Sequence
from pathlib import Path

from chartmaker.files.problems import UserProblem, printable_lines

WRONG = 2
DISPLAYS = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
"""Where Linux tells of a display; without any, Qt would end the process with a fault and no sentence."""
COMMANDS = ("new", "report", "print", "picture", "lots", "take", "compare", "fit", "baths")


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and give its exit status; what the user can put right is told in a sentence."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    words = list(sys.argv[1:] if arguments is None else arguments)
    try:
        return _run(words)
    except UserProblem as problem:
        print(printable_lines(f"chartmaker: {problem}"), file=sys.stderr)
    except BrokenPipeError:
        # Whoever read our output has seen enough; what is still buffered has nowhere to go.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except KeyboardInterrupt:
        print("chartmaker: stopped", file=sys.stderr)
    except Exception as error:
        if os.environ.get("CHARTMAKER_TRACEBACK"):
            raise
        print(f"chartmaker: a fault in the program itself, {type(error).__name__}: {error}", file=sys.stderr)
        print("Set CHARTMAKER_TRACEBACK=1 and run it again to see where.", file=sys.stderr)
    return WRONG


def _run(words: list[str]) -> int:
    if not words or (words[0] not in COMMANDS and not words[0].startswith("-")):
        return _window(words)
    from chartmaker.commands import run

    return run(words)


def _window(words: list[str]) -> int:
    if len(words) > 1:
        raise UserProblem(
            what=f"{words[0]!r} is no command, and the window takes one design",
            now=f"the commands are {', '.join(COMMANDS)}",
        )
    if sys.platform == "linux" and not any(os.environ.get(name) for name in DISPLAYS):
        raise UserProblem(
            what="there is no display to open the window on",
            now="all the commands work without one",
        )
    # What is loaded stays; looking for rubbish among it takes a twentieth of the start. The window turns it on again.
    gc.disable()
    try:
        from chartmaker.app.main import run
    except ImportError as error:
        raise UserProblem(
            what=f"the window cannot start: {error}",
            now="install the system libraries that the README names; all the commands work without them",
        ) from error
    return run(Path(words[0]) if words else None)
