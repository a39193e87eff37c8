# SPDX-License-Identifier: Apache-2.0
"""Where the crew goes: latitude, longitude, metres. The roads between are invented."""

P = {
    "yard": (-44.2620, 170.1050, 470), "dam": (-44.1900, 170.1480, 500), "flats": (-44.1100, 170.3100, 630),
    "tekapo": (-44.0060, 170.4720, 715), "burkes": (-44.0920, 170.6500, 705), "fairlie": (-44.0980, 170.8300, 310),
    "cave": (-44.1500, 170.9600, 270), "geraldine": (-44.0900, 171.2300, 120), "peel": (-43.9200, 171.2700, 250),
    "somers": (-43.7200, 171.4200, 370), "methven": (-43.6340, 171.6470, 320), "rakaia": (-43.5150, 171.6600, 250),
    "glentunnel": (-43.4800, 171.9200, 220), "springfield": (-43.3400, 171.9200, 380),
    "porters": (-43.2900, 171.7400, 930), "cass": (-43.0400, 171.7500, 570), "bealey": (-43.0200, 171.6100, 620),
    "arthurs": (-42.9420, 171.5640, 740), "otira": (-42.8300, 171.5600, 380), "jacksons": (-42.7480, 171.5200, 170),
    "moana": (-42.5800, 171.4700, 95),
    "omarama": (-44.4870, 169.9670, 420), "longslip": (-44.5500, 169.8000, 560), "lindis": (-44.5900, 169.6450, 965),
    "morven": (-44.6900, 169.4900, 420), "tarras": (-44.8350, 169.4100, 280), "cromwell": (-45.0300, 169.2100, 215),
    "clyde": (-45.1500, 169.3000, 180), "alexandra": (-45.2480, 169.3880, 155), "omakau": (-45.0900, 169.6000, 310),
    "hills": (-45.0500, 169.8200, 470), "ranfurly": (-45.1300, 170.1000, 430), "kyeburn": (-45.1500, 170.2500, 370),
    "danseys": (-44.9800, 170.3600, 930), "duntroon": (-44.8600, 170.6800, 115), "kurow": (-44.7340, 170.4700, 215),
    "otematata": (-44.6100, 170.1900, 350), "georgetown": (-44.9200, 170.8300, 70), "weston": (-45.0800, 170.9200, 55),
    "herbert": (-45.2200, 170.8000, 70), "moeraki": (-45.3560, 170.8290, 12),
    "wanaka": (-44.7000, 169.1500, 290), "hawea": (-44.5600, 169.2500, 360), "makarora": (-44.2300, 169.2300, 330),
    "gates": (-44.1050, 169.3550, 560), "clarke": (-43.9800, 169.4000, 110), "roaring": (-43.9300, 169.2300, 45),
    "haast": (-43.8900, 169.0700, 12), "paringa": (-43.7200, 169.4800, 25), "karangarua": (-43.5700, 169.8200, 45),
    "fox": (-43.4650, 170.0200, 160), "franz": (-43.3900, 170.1800, 140), "okarito": (-43.2300, 170.1900, 15),
    "godley": (-43.8600, 170.5400, 740), "lilybank": (-43.7100, 170.5200, 790),
    "ahuriri": (-44.4300, 169.7800, 600), "ahuriri_hut": (-44.3500, 169.7000, 690),
}

SOUTH = ["yard", "omarama", "longslip", "lindis", "morven", "tarras", "cromwell", "clyde", "alexandra"]
DANSEYS = ["alexandra", "omakau", "hills", "ranfurly", "kyeburn", "danseys", "duntroon", "kurow",
           "otematata", "omarama", "yard"]
NORTH = ["yard", "dam", "flats", "tekapo", "burkes", "fairlie", "cave", "geraldine", "peel", "somers", "methven"]
PASS = NORTH + ["rakaia", "glentunnel", "springfield", "porters", "cass", "bealey", "arthurs", "otira",
                "jacksons", "moana"]
SHORE = ["yard", "omarama", "otematata", "kurow", "duntroon", "georgetown", "weston", "herbert", "moeraki"]
WEST = ["yard", "omarama", "longslip", "lindis", "morven", "tarras", "wanaka", "hawea", "makarora", "gates",
        "clarke", "roaring", "haast"]
UPCOAST = ["haast", "paringa", "karangarua", "fox", "franz", "okarito"]
GODLEY = ["yard", "dam", "flats", "tekapo", "godley", "lilybank"]
AHURIRI = ["yard", "omarama", "ahuriri", "ahuriri_hut"]


def back(route):
    return route[::-1]
