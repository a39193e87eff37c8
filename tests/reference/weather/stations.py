# SPDX-License-Identifier: Apache-2.0
"""What stations measured, read from the files of tests/real/fetch_climate.sh; one function a source."""
import csv
import json
import math

import numpy
from scipy.io import netcdf_file

MONTHS = range(12)
COUNTRIES = {" US": "United States", " CN": "Canada"}
# the airport whose station stands for the city, by the code in airports.csv
AIRPORTS = dict(zip(
    ["Albany", "Albuquerque", "Atlanta", "Baltimore", "Buffalo", "Charleston", "Chicago", "Cincinnati", "Cleveland",
     "Columbus", "Dallas", "Denver", "Des Moines", "Detroit", "Hartford", "Houston", "Indianapolis", "Jacksonville",
     "Kansas City", "Little Rock", "Louisville", "Memphis", "Miami", "Milwaukee", "Minneapolis", "Nashville",
     "New Orleans", "Norfolk", "Omaha", "Philadelphia", "Phoenix", "Pittsburgh", "Providence", "Richmond",
     "Salt Lake City", "San Francisco", "Seattle", "St. Louis", "Washington", "Wichita", "Wilmington"],
    "ALB ABQ ATL BWI BUF CHS ORD LUK CLE CMH DAL DEN DSM DTW HFD IAH IND JAX MCI LIT SDF MEM MIA MKE MSP BNA MSY ORF "
    "OMA PHL PHX PIT PVD RIC SLC SFO SEA STL DCA ICT ILG".split(), strict=True))


def rows(folder, name):
    with open(folder / name, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def celsius(fahrenheit):
    return (float(fahrenheit) - 32.0) / 1.8


def mean(values):
    values = list(values)
    return sum(values) / len(values)


def us_cities(folder):
    """(latitude, longitude, annual mean in °C, annual rain in mm) of 41 cities."""
    airports = {row["iata"]: row for row in rows(folder, "airports.csv")}
    for row in rows(folder, "us_cities.csv"):
        airport = airports[AIRPORTS[row["city"]]]
        yield (float(airport["latitude"]), float(airport["longitude"]), celsius(row["fahrenheit"]),
               float(row["inches"]) * 25.4)


def colorado(folder):
    """(latitude, longitude, altitude, 12 means, 12 lows, 12 highs, 12 rains in mm) of stations with every month."""
    stations = {}
    for row in rows(folder, "colorado.csv"):
        stations.setdefault(row["station"], []).append(row)
    for months in stations.values():
        if any("NA" in (row["low"], row["high"], row["centimetres"]) for row in months):
            continue
        low = [float(row["low"]) for row in months]
        high = [float(row["high"]) for row in months]
        first = months[0]
        yield (float(first["latitude"]), float(first["longitude"]), float(first["altitude"]),
               [(a + b) / 2 for a, b in zip(low, high)], low, high,
               [10.0 * float(row["centimetres"]) for row in months])


def france(folder):
    """(latitude, longitude, 12 means) of 30 cities."""
    places = [line.split() for line in (folder / "france_degrees.txt").read_text().splitlines()]
    for row, place in zip(rows(folder, "france.csv"), places, strict=True):
        yield float(place[0]), float(place[1]), [float(value) / 10.0 for value in list(row.values())[1:]]


def nottingham(folder):
    """12 means of 1920-39 at Nottingham Castle."""
    series = [celsius(row["fahrenheit"]) for row in rows(folder, "nottingham.csv")]
    return [mean(series[month::12]) for month in MONTHS]


def frost_days(folder):
    """(latitude, longitude, days a year with a minimum below freezing) of 50 capitals or large cities."""
    capitals = {row["state"]: row for row in json.loads((folder / "us-state-capitals.json").read_text())}
    for row in rows(folder, "frost.csv"):
        capital = capitals[row["state"]]
        yield float(capital["lat"]), float(capital["lon"]), float(row["days"])


def seattle_normals(folder):
    """12 means of 1981-2010."""
    hours = rows(folder, "seattle-weather-hourly-normals.csv")
    return [mean(float(row["temperature"]) for row in hours if int(row["date"][5:7]) == month + 1)
            for month in MONTHS]


def daily(folder, city):
    """12 x (mean, low, high, rain in mm a month) of 2012-15."""
    days = [row for row in rows(folder, "weather.csv") if row["location"] == city]
    for month in MONTHS:
        own = [row for row in days if int(row["date"][5:7]) == month + 1]
        low, high = mean(float(row["temp_min"]) for row in own), mean(float(row["temp_max"]) for row in own)
        yield (low + high) / 2, low, high, sum(float(row["precipitation"]) for row in own) / 4.0


def vapor(celsius_degrees):
    """hPa, by [ALDUCHOV-ESKRIDGE-1996]."""
    return 6.1094 * math.exp(17.625 * celsius_degrees / (243.04 + celsius_degrees))


def text(characters):
    return b"".join(characters).strip(b"\0 ").decode("latin1")


def reports(folder):
    """Stations of 18 March 1995 with 22 hours or more: dict of country, latitude, longitude, altitude, mean, low,
    high, dew (°C), humidity (%). A row of the file is another station each hour, so they are gathered by name."""
    with netcdf_file(folder / "950318_sao.cdf", mmap=False) as file:
        values = {name: file.variables[name][:].astype(float) for name in ("lat", "lon", "elev", "T", "TD")}
        names, regions = file.variables["id"][:], file.variables["region"][:]
    stations, countries = {}, {}
    for hour in range(24):
        usable = (numpy.abs(values["lat"][:, hour]) <= 90) & \
            (numpy.abs(values["lon"][:, hour]) <= 180) & (numpy.abs(values["T"][:, hour]) < 60) & \
            (numpy.abs(values["TD"][:, hour]) < 70) & (values["TD"][:, hour] <= values["T"][:, hour] + 1)
        for row in numpy.flatnonzero(usable):
            name = text(names[row, hour])
            if name:
                countries[name] = COUNTRIES.get(text(regions[row, hour])[-3:], "elsewhere")  # "SA ON CN"
                stations.setdefault(name, {})[hour] = [values[key][row, hour] for key in
                                                       ("lat", "lon", "elev", "T", "TD")]
    for name, hours in sorted(stations.items()):
        if len(hours) < 22:
            continue
        table = numpy.array(list(hours.values()))
        latitude, longitude, altitude = numpy.median(table[:, :3], 0)
        air, dew = table[:, 3], table[:, 4]
        if not -100 < altitude < 4000:
            continue
        yield {"country": countries[name], "latitude": latitude, "longitude": longitude, "altitude": altitude,
               "mean": air.mean(), "low": air.min(), "high": air.max(), "dew": dew.mean(),
               "humidity": mean(min(100.0, 100.0 * vapor(d) / vapor(a)) for d, a in zip(dew, air))}
