// SPDX-License-Identifier: Apache-2.0
// What two libraries say of the sun: node sun_libraries.cjs FOLDER < [[latitude, "2026-06-21"], …]; answers with a list of
// {declination, frame_declination, hours, almanac_hours, extraterrestrial}, made of their numbers alone.
"use strict";
const path = require("path");
const folder = process.argv[2];
const suncalc = require(path.resolve(folder, "suncalc.cjs"));
const solar = require(path.resolve(folder, "solar-calculator.cjs"));

const minute = 60 * 1000;
const solarConstant = 0.0820; // MJ/m² a minute, as FAO-56 has it

// (mean distance / distance)² from the orbit's shape and the anomaly.
function inverseDistance(century) {
    const e = solar.orbitEccentricity(century);
    const anomaly = ((solar.meanAnomaly(century) + solar.equationOfCenter(century)) * Math.PI) / 180;
    return ((1 + e * Math.cos(anomaly)) / (1 - e * e)) ** 2;
}

function day(latitude, date) {
    const noon = new Date(date + "T12:00:00Z");
    const century = solar.century(noon);
    let light = 0;
    let up = 0;
    for (let m = 0; m < 1440; ++m) {
        const at = new Date(noon.getTime() + (m - 720 + 0.5) * minute);
        const height = Math.sin(suncalc.getPosition(at, latitude, 0).altitude);
        if (height > 0) {
            light += height;
            ++up;
        }
    }
    return {
        declination: solar.declination(century),
        // suncalc stays in the frame of the year 2000, 0.2 degrees from the other: its own, seen from the pole
        frame_declination: (suncalc.getPosition(noon, 90, 0).altitude * 180) / Math.PI,
        hours: up / 60,
        almanac_hours: solar.hours(noon, latitude),
        extraterrestrial: solarConstant * inverseDistance(century) * light,
    };
}

const asked = JSON.parse(require("fs").readFileSync(0, "utf8"));
console.log(JSON.stringify(asked.map(([latitude, date]) => day(latitude, date))));
