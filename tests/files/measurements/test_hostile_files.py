"""Measurement files made to do harm: none ends in anything but a refusal, and none takes long."""

import time

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from chartmaker.files.measurements.contents import Contents
from chartmaker.files.measurements.opening import measurements_from, read_measurements
from chartmaker.files.measurements.typed import typed_reading
from chartmaker.files.problems import LONGEST_SHOWN, MOST_SHOWN, FileRefused, UserProblem
from chartmaker.files.toml_text import MOST_BYTES
from tests.files.measurements.builders import SAMPLES, cgats, cxf

PATIENCE_S = 30.0
"""Far more than any of these takes on a busy machine, far less than what they could be made to take."""
SAMPLE_BYTES = {path.name: path.read_bytes() for path in sorted(SAMPLES.iterdir())}
LAUGHS = (
    '<?xml version="1.0"?><!DOCTYPE CxF [<!ENTITY a0 "ha">'
    + "".join(f'<!ENTITY a{n} "{f"&a{n - 1};" * 10}">' for n in range(1, 30))
    + "]><CxF>&a29;</CxF>"
)
OUTSIDE = '<?xml version="1.0"?><!DOCTYPE CxF [<!ENTITY x SYSTEM "file:///etc/hostname">]><CxF>&x;</CxF>'


def outcome(data):
    """Read, and give the contents or the refusal; anything else fails the test, and so does waiting."""
    began = time.monotonic()
    try:
        found = measurements_from(data, "file")
    except FileRefused as refused:
        shown = str(refused).splitlines()
        assert len(shown) <= MOST_SHOWN + 2
        assert all(len(line) <= 3 * LONGEST_SHOWN for line in shown)
        found = refused
    assert time.monotonic() - began < PATIENCE_S
    return found


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        pytest.param(LAUGHS, "line 1: it has a document type", id="entities within entities"),
        pytest.param(OUTSIDE, "line 1: it has a document type", id="an entity from outside"),
        pytest.param('<!DOCTYPE CxF SYSTEM "http://example.org/x.dtd"><CxF/>', "document type", id="a remote type"),
        pytest.param("<a>" * 100_000, "its elements are nested too deep", id="deep elements"),
        pytest.param("<CxF>" + "<a/>" * 700_000 + "</CxF>", "it has too many elements", id="many elements"),
        pytest.param("<CxF>&x;</CxF>", "not valid XML", id="an entity that nothing names"),
        pytest.param("<CxF><Object>", "is not valid XML", id="cut short"),
        pytest.param("<html/>", "this is XML, but no CxF", id="another XML"),
        pytest.param('<?xml version="1.0" encoding="klingon"?><CxF/>', "file", id="no encoding"),
        pytest.param(
            cxf(f'<Object Name="a"><ColorValues><ReflectanceSpectrum StartWL="400">{"1 " * 2000}'
                "</ReflectanceSpectrum></ColorValues></Object>"),
            "a spectrum has 2000 values, more than 1000",
            id="a long spectrum",
        ),
        pytest.param("BEGIN_DATA_FORMAT\n" + "A " * 90_000 + "\n", "has more than 2000 fields", id="many fields"),
        pytest.param(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", '"' * 190_000), "file", id="quotes"),
        pytest.param(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "9" * 150_000 + " 1 2 3"), "the name has", id="a name"),
        pytest.param(cgats("SAMPLE_ID LAB_L LAB_A LAB_B", "a " + "9" * 150_000 + " 2 3"), "no number", id="digits"),
        pytest.param(
            "K " * 50_000 + "\nBEGIN_DATA_FORMAT\nSAMPLE_ID\nEND_DATA_FORMAT\n" + "BEGIN_DATA\nEND_DATA\n" * 300_000,
            "there are more than 100 data sets",
            id="data sets",
        ),
        pytest.param("K\n" * 3_000_000 + "BEGIN_DATA\n", "BEGIN_DATA_FORMAT", id="keywords"),
        pytest.param("name,L,a,b\n" + "x,1,2,3\n" * 900_000, "more than 25600", id="many rows"),
        pytest.param("name,L,a,b" + "," * 150_000 + "\nx,1,2,3", "more than 2000 cells", id="many cells"),
        pytest.param("," * 250_000, "a line has more than 200000 characters", id="a long line"),
        pytest.param('name,L,a,b\n"' + "x\n" * 900_000, "file", id="a quote that never closes"),
        pytest.param("\n" * MOST_BYTES, "the file is empty", id="empty lines"),
        pytest.param("x" * (MOST_BYTES + 1), "the file is larger than 8 MB", id="too large"),
        pytest.param("400\n" * 1_900_000, "file", id="wavelengths and nothing else"),
    ],
)  # fmt: skip
def test_files_made_to_do_harm_are_refused_in_time(text, sentence):
    found = outcome(text.encode())
    assert isinstance(found, FileRefused)
    assert sentence in str(found)


@given(st.binary(max_size=400))
@example(b"\xff\xfe<")
@example(b"\xfe\xff\x00")
@example(b"<?xml version='1.0' encoding='utf-16'?><CxF/>")
def test_any_bytes_are_contents_or_a_refusal(data):
    assert isinstance(outcome(data), Contents | FileRefused)


PIECES = st.sampled_from(
    [
        *("BEGIN_DATA_FORMAT\n", "END_DATA_FORMAT\n", "BEGIN_DATA\n", "END_DATA\n", "SAMPLE_ID", "LAB_L LAB_A LAB_B"),
        *("<CxF>", "</CxF>", "<Object Name='a'>", "</Object>", "<ColorCIELab>", "<L>", "5", "nan", "-", "1e999", '"'),
        *("name", "L", "a", "b", ",", ";", "\t", "|", "\n", "\r", " ", "400", "410", "nm", "%", "#", "\x85", "ß", "İ"),
        *("D65/10", "(C/2)", "ILLUMINANT ", "OBSERVER ", "²", "٣"),
    ]
)


@given(st.lists(PIECES, max_size=60).map("".join))
@settings(max_examples=300)
def test_any_jumble_of_the_grammars_is_contents_or_a_refusal(text):
    assert isinstance(outcome(text.encode()), Contents | FileRefused)


@given(
    st.sampled_from(sorted(SAMPLE_BYTES)),
    st.integers(0, 4000),
    st.one_of(st.binary(max_size=6), PIECES.map(str.encode)),
    st.integers(0, 200),
)
@settings(max_examples=300)
def test_a_sample_with_a_piece_changed_is_contents_or_a_refusal(name, place, piece, removed):
    data = SAMPLE_BYTES[name]
    at = min(place, len(data))
    assert isinstance(outcome(data[:at] + piece + data[at + removed :]), Contents | FileRefused)


@given(st.one_of(st.text(max_size=60), st.lists(PIECES, max_size=12).map("".join)))
@settings(max_examples=300)
def test_any_typed_line_is_a_colour_or_a_sentence(text):
    sentence, reading = "", None
    try:
        reading = typed_reading(text)
    except UserProblem as problem:
        sentence = str(problem)
    assert sentence or reading.kind in {"lab", "xyz", "srgb"}


def test_a_folder_and_a_pipe_are_refused(tmp_path):
    import os

    os.mkfifo(tmp_path / "pipe")
    for name, sentence in (("", "a folder"), ("pipe", "not an ordinary file"), ("gone", "no such file")):
        with pytest.raises(FileRefused) as refused:
            read_measurements(tmp_path / name)
        assert sentence in str(refused.value)
