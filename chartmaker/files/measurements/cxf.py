"""CxF3 / ISO 17972-1 XML: objects with their colour values, and the specifications that those name.

The parser is expat itself, as the standard library has it: it tells line and column, needs nothing further, and what
can do harm is refused before it is read: a document type, and with it every entity; depth and number of elements are
bounded.
Elements are known by their own names under any prefix, since writers differ in theirs.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from xml.parsers import expat

from chartmaker.files.measurements.contents import GRAPHIC_VIEWING, TEXTILE_VIEWING, Contents, Findings, contents_of
from chartmaker.files.measurements.numerals import number_in
from chartmaker.files.measurements.sheet import assumed_sentence
from chartmaker.files.measurements.spectra import Scale, factors_from, lab_of_lch, scale_of
from chartmaker.files.measurements.viewing_words import ToldViewing, illuminant_or_words, observer_in
from chartmaker.files.problems import refusal
from chartmaker.model.reading import LabReading, Reading, Spectrum, XyzReading
from chartmaker.model.settings import ILLUMINANTS

DEEPEST = 40
"""Elements within elements; the standard needs about ten."""
MOST_ELEMENTS = 600_000
MOST_VALUES = 1000
"""Numbers of a spectrum; one nanometre apart from 300 to 900 nm is 601."""
LARGEST_BY_SCHEMA = 3.0
"""A ReflectanceSpectrum stays below it by the standard's schema, being a factor; some writers give percent."""
USUAL_STEP_NM = 10.0

_COORDINATES = {"ColorCIELab": "LAB", "ColorCIEXYZ": "XYZ", "ColorCIELCh": "LCH"}
_KINDS = ("ReflectanceSpectrum", *_COORDINATES)
"""Colour values that are read, the best first."""


@dataclass(slots=True)
class _Value:
    """A colour value of an object."""

    kind: str
    line: int
    attributes: dict[str, str]
    text: str = ""
    parts: dict[str, str] = field(default_factory=dict)

    @property
    def specification(self) -> str:
        return self.attributes.get("ColorSpecification", "")


@dataclass(slots=True)
class _Object:
    """One sample."""

    name: str
    line: int
    values: list[_Value] = field(default_factory=list)


@dataclass(slots=True)
class _Specification:
    """What a colour specification says of its values."""

    told: ToldViewing = ToldViewing()
    start_nm: str = ""
    step_nm: str = ""


def is_cxf(data: bytes) -> bool:
    """Tell whether bytes look like XML rather than text, in any of its usual encodings."""
    head = data[:400].replace(b"\0", b"").removeprefix(b"\xef\xbb\xbf").removeprefix(b"\xff\xfe")
    return head.removeprefix(b"\xfe\xff").lstrip().startswith(b"<")


def cxf_contents(data: bytes, where: str) -> Contents:
    """Read a file's objects. Raises FileRefused with everything that is wrong."""
    document = _Document(where)
    document.parse(data)
    found = Findings()
    if not document.is_cxf:
        raise refusal("this is XML, but no CxF", where=where)
    _read(document, found)
    return contents_of(found, "CxF", where=where)


class _Document:
    """Gathers objects and specifications while expat walks the file."""

    def __init__(self, where: str) -> None:
        self.objects: list[_Object] = []
        self.specifications: dict[str, _Specification] = {}
        self.is_cxf = False
        self._where = where
        self._path: list[str] = []
        self._text: list[str] = []
        self._elements = 0
        self._object: _Object | None = None
        self._value: _Value | None = None
        self._specification = _Specification()
        self._parser = parser = expat.ParserCreate()
        parser.buffer_text = True
        parser.StartDoctypeDeclHandler = self._refuse_document_type
        parser.StartElementHandler = self._start
        parser.EndElementHandler = self._end
        parser.CharacterDataHandler = self._take_text

    def parse(self, data: bytes) -> None:
        """Walk the file. Raises FileRefused where it is no XML, or does what a measurement file need not do."""
        try:
            self._parser.Parse(data, True)
        except expat.ExpatError as problem:
            place = f"line {problem.lineno}, column {problem.offset + 1}"
            what = expat.ErrorString(problem.code) or "it cannot be read"
            raise refusal(f"{place} is not valid XML: {what}", where=self._where) from None
        except (LookupError, ValueError) as problem:
            if isinstance(problem, UnicodeError | LookupError):
                raise refusal("its encoding is not known", where=self._where) from None
            raise

    def _refuse_document_type(self, *_words: object) -> None:
        what = f"line {self._parser.CurrentLineNumber}: it has a document type, which a measurement file need not have"
        raise refusal(what, where=self._where)

    def _start(self, name: str, attributes: dict[str, str]) -> None:
        self._elements += 1
        if len(self._path) >= DEEPEST or self._elements > MOST_ELEMENTS:
            what = "its elements are nested too deep" if self._elements <= MOST_ELEMENTS else "it has too many elements"
            raise refusal(f"line {self._parser.CurrentLineNumber}: {what}", where=self._where)
        local = name.rpartition(":")[2]
        if not self._path:
            self.is_cxf = local == "CxF"
        self._path.append(local)
        self._text.clear()
        line = self._parser.CurrentLineNumber
        if local == "Object":
            self._object = _Object(attributes.get("Name", "").strip() or attributes.get("Id", ""), line)
            self.objects.append(self._object)
        elif local in _KINDS and self._object is not None:
            self._value = _Value(local, line, attributes)
            self._object.values.append(self._value)
        elif local == "ColorSpecification":
            self._specification = self.specifications.setdefault(attributes.get("Id", ""), _Specification())
        elif local == "WavelengthRange":
            self._specification.start_nm = attributes.get("StartWL", "")
            self._specification.step_nm = attributes.get("Increment", "")

    def _end(self, _name: str) -> None:
        local = self._path.pop()
        text = "".join(self._text).strip()
        if self._value is not None and local == self._value.kind:
            self._value.text = text
            self._value = None
        elif self._value is not None:
            self._value.parts.setdefault(local.upper(), text)
        elif local == "Object":
            self._object = None
        elif local == "ColorSpecification":
            self._specification = _Specification()
        elif local in {"Illuminant", "Observer"} and "TristimulusSpec" in self._path:
            self._tell(local, text)
        self._text.clear()

    def _tell(self, local: str, text: str) -> None:
        told = self._specification.told
        if local == "Illuminant":
            self._specification.told = replace(told, illuminant=illuminant_or_words(text))
        else:
            self._specification.told = replace(told, observer=observer_in(text.replace("_", " ")))

    def _take_text(self, text: str) -> None:
        self._text.append(text)


# --- objects to readings


def _read(document: _Document, found: Findings) -> None:
    taken = [(each, value) for each in document.objects for value in _values_to_take(document, each, found)]
    spectra: dict[int, list[float]] = {}
    for _, value in taken:
        if value.kind == "ReflectanceSpectrum" and (numbers := _numbers(value.text.split(), value, found)):
            spectra[id(value)] = numbers
    scale = scale_of(spectra.values(), norm=None, largest=LARGEST_BY_SCHEMA) if spectra else Scale(1.0, "")
    if scale.sentence:
        found.note(scale.sentence)
    for each, value in taken:
        specification = document.specifications.get(value.specification, _Specification())
        if value.kind == "ReflectanceSpectrum":
            numbers = spectra.get(id(value), [])
            make = _spectrum_maker(value, specification, numbers, scale.white) if numbers else None
        else:
            make = _colour_maker(value, specification)
        _add(each, value, make, found)


def _add(each: _Object, value: _Value, make: Callable[[Findings], Reading] | None, found: Findings) -> None:
    if make is None:
        return
    place = f"line {value.line}"
    try:
        found.add(each.name, make(found), place)
    except ValueError as problem:
        found.problems.add(place, f"{value.kind} of {each.name!r}: {problem}")


def _values_to_take(document: _Document, each: _Object, found: Findings) -> Sequence[_Value]:
    """Give the values of the best kind under one specification: others tell of the same measurement, or of another."""
    best = next((kind for kind in _KINDS if any(value.kind == kind for value in each.values)), "")
    same = [value for value in each.values if value.kind == best]
    names = list(dict.fromkeys(value.specification for value in same))
    if len(names) < 2:
        return same
    chosen = names[0]
    if best in _COORDINATES:
        told = {name: document.specifications.get(name, _Specification()).told for name in names}
        usable = [name for name in names if told[name].illuminant in ILLUMINANTS]
        usual = [
            name
            for name in usable
            if (told[name].illuminant, told[name].observer) == (TEXTILE_VIEWING.illuminant, TEXTILE_VIEWING.observer)
        ]
        chosen = next(iter(usual or usable), chosen)
    found.note(_one_of_several(chosen))
    return [value for value in same if value.specification == chosen]


def _one_of_several(name: str) -> str:
    return f"where a sample has values under several colour specifications, those under {name!r} are taken"


def _numbers(words: Sequence[str], value: _Value, found: Findings) -> list[float]:
    if len(words) > MOST_VALUES:
        found.problems.add(f"line {value.line}", f"a spectrum has {len(words)} values, more than {MOST_VALUES}")
        return []
    try:
        return [number_in(word) for word in words]
    except ValueError as problem:
        found.problems.add(f"line {value.line}", f"a value of {value.kind} {problem}")
        return []


def _spectrum_maker(
    value: _Value, specification: _Specification, numbers: Sequence[float], white: float
) -> Callable[[Findings], Reading]:
    def make(found: Findings) -> Reading:
        start = value.attributes.get("StartWL", "") or specification.start_nm
        step = value.attributes.get("Increment", "") or specification.step_nm
        if not start:
            raise ValueError("neither it nor its ColorSpecification says where it starts")
        if not step:
            found.note("no Increment is told; spectra are taken for steps of 10 nm")
        factors, sentence = factors_from(numbers, white)
        step_nm = number_in(step) if step else USUAL_STEP_NM
        reading = Spectrum(start_nm=number_in(start), step_nm=step_nm, reflectance=factors)
        if sentence:
            found.note(sentence)
        return reading

    return make


def _colour_maker(value: _Value, specification: _Specification) -> Callable[[Findings], Reading]:
    def make(found: Findings) -> Reading:
        viewing = specification.told.completed(GRAPHIC_VIEWING)
        one, two, three = (_part(value, name) for name in _COORDINATES[value.kind])
        if not specification.told.is_whole:
            found.note(assumed_sentence(specification.told, viewing))
        if value.kind == "ColorCIEXYZ":
            return XyzReading(xyz=(one, two, three), viewing=viewing)
        lab = (one, two, three) if value.kind == "ColorCIELab" else lab_of_lch(one, two, three)
        return LabReading(lab=lab, viewing=viewing)

    return make


def _part(value: _Value, name: str) -> float:
    try:
        return number_in(value.parts.get(name, ""))
    except ValueError as problem:
        raise ValueError(f"{name} {problem}") from None
