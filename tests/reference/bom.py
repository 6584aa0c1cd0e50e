"""Holds a bill of materials (JSON on standard input) against CycloneDX's own schema, and reads it with its library."""

import json
import sys

from cyclonedx.model.bom import Bom
from cyclonedx.schema import SchemaVersion
from cyclonedx.validation.json import JsonStrictValidator

text = sys.stdin.read()
fault = JsonStrictValidator(SchemaVersion.V1_6).validate_str(text)
if fault:
    json.dump({"faults": [str(fault)]}, sys.stdout)
else:
    components = Bom.from_json(json.loads(text)).components
    crates = [one for one in components if one.purl.type == "cargo" and one.purl.version == one.version]
    json.dump({"faults": [], "crates": len(crates), "components": len(components)}, sys.stdout)
