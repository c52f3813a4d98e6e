"""States and reference values of water and moist air, as JSON.

Needs the Debian packages python3-gsw and python3-iapws. Run by scripts/fluids-against-references.ts.
"""
import json
import random
import sys
import warnings

import gsw
from iapws import _iapws, humidAir, iapws95

warnings.simplefilter("ignore")
draw = random.Random(int(sys.argv[1]))
count = int(sys.argv[2])


def states(**ranges):
    return [{name: draw.uniform(low, high) for name, (low, high) in ranges.items()} for _ in range(count)]


def compared(rows, reference):
    return [dict(row, reference=float(reference(row))) for row in rows]


shallow = states(SA=(0, 40), t=(-1, 35), p=(0, 300))
deep = states(SA=(0, 40), t=(0, 35), p=(0, 3000))
columns = states(SA=(0, 40), t=(1, 30), latitude=(-90, 90), depth=(0, 300))
warm = states(T=(273.16, 373.15))
cold = states(T=(100, 273.16))
humid = states(T=(200, 470), p=(0.01, 5), x=(0, 0.2))
gases = {"helium": "He", "argon": "Ar", "hydrogen": "H2", "nitrogen": "N2", "oxygen": "O2", "carbonDioxide": "CO2"}
air_virials = [dict(state, **{name: humidAir._virial(state["T"])[name] for name in ("Baa", "Baw", "Bww", "Caaa", "Caaw", "Caww", "Cwww")}) for state in states(T=(200, 470))]

print(json.dumps({
    "versions": {"gsw": gsw.__version__, "iapws": __import__("iapws").__version__},
    "density of sea water, 0 to 300 dbar": compared(shallow, lambda s: gsw.rho_t_exact(s["SA"], s["t"], s["p"])),
    "density of sea water, 0 to 3000 dbar": compared(deep, lambda s: gsw.rho_t_exact(s["SA"], s["t"], s["p"])),
    "density by TEOS-10 polynomial": compared(deep, lambda s: gsw.rho(s["SA"], s["t"], s["p"])),
    "speed of sound, 0 to 300 dbar": compared(
        states(SA=(0, 40), t=(0, 35), p=(0, 300)), lambda s: gsw.sound_speed_t_exact(s["SA"], s["t"], s["p"])
    ),
    "speed of sound, 0 to 3000 dbar": compared(deep, lambda s: gsw.sound_speed_t_exact(s["SA"], s["t"], s["p"])),
    "gravity at sea level": compared(columns, lambda s: gsw.grav(s["latitude"], 0)),
    "pressure in the standard ocean": [
        dict(s, SA=35.16504, t=0.0, reference=float(gsw.p_from_z(-s["depth"], s["latitude"]))) for s in columns
    ],
    "freezing point": compared(states(SA=(4, 40), p=(0, 50)), lambda s: gsw.t_freezing(s["SA"], s["p"], 0)),
    "vapour pressure over water": compared(warm, lambda s: iapws95.IAPWS95._Vapor_Pressure(s["T"]) * 1e6),
    "vapour pressure over water by phase equilibrium": [
        dict(s, reference=iapws95.IAPWS95(T=s["T"], x=0).P * 1e6) for s in warm[:200]
    ],
    "vapour pressure over ice": compared(cold, lambda s: _iapws._Sublimation_Pressure(s["T"]) * 1e6),
    "fugacity of water in air": compared(humid, lambda s: humidAir._fugacity(s["T"], s["p"], s["x"]) * 1e6),
    "virial coefficients": air_virials,
    "liquid water": [
        dict(s, **{name: _iapws._Liquid(s["T"])[name] for name in ("rho", "cp", "w", "mu", "k")}) for s in states(T=(254, 383))
    ],
    "Henry's constants": [
        dict(s, gas=gas, reference=_iapws._Henry(s["T"], symbol) * 1e6)
        for gas, symbol in gases.items() for s in states(T=(279, 373))
    ],
}))
