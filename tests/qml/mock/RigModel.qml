// SPDX-License-Identifier: Apache-2.0
// An invented rig with four findings, one of each call and one without a place.
import QtQml

QtObject {
    id: root

    property string name: "Matagouri"
    property string about: "twin-axle travel trailer, 6.4 m, 2 500 kg; 31 204 km"
    property string state: "1 on hold: do not move it. 2 to mend soon, 1 to watch. 131 of 138 points looked at on 12 March; 6 are past due. This says what was looked at, not that nothing will fail."
    property bool kerbLeft: true
    readonly property var drawn: ({ kindSlug: "travel_trailer", practice: "australia_new_zealand", hitch: "ball", bodyLength: 6.4, bodyWidth: 2.3, bodyHeight: 2.2, floorHeight: 0.55, hitchLength: 1.25,
        axles: [3.3, 4.15], openings: root.openings, fitted: ["fresh_water", "waste_tanks", "toilet", "lp_gas", "house_battery"], kerbLeft: root.kerbLeft })
    property string everElsewhere: "1 finding written without a place"
    property var everPlaces: [
        { number: 1, findingId: "f4", kind: "", face: "top", x: 3.55, y: 0.2, z: 2.75, times: 4, open: true, where: "roof, 3.6 m from the front, 0.2 m to the road side", what: "Lap sealant, middle vent", when: "4 times, first on 3 May 2024, last on 12 March; last mend on 14 January" },
        { number: 2, findingId: "f1", kind: "", face: "left", x: 0.12, y: -1.15, z: 2.05, times: 2, open: true, where: "kerb side, 0.1 m from the front, 2.1 m up", what: "Front cap seam", when: "2 times, first on 9 June 2025, last on 12 March; no mend written" },
        { number: 3, findingId: "f7", kind: "", face: "left", x: 3.3, y: -1.15, z: 0.35, times: 1, open: false, where: "wheel 1L", what: "Wheel nuts; Tread depth", when: "once, on 1 August 2025; last mend on 2 August 2025; nothing open" },
        { number: 4, findingId: "f8", kind: "", face: "", x: NaN, y: NaN, z: NaN, times: 1, open: false, where: "stove flue", what: "Heater flue", when: "once, on 4 August 2025; no mend written; nothing open" }]
    property var openings: [
        { name: "vent 1", kind: "vent", face: "top", x: 1.1, y: 0, z: 2.75, w: 0.4, h: 0.4 },
        { name: "vent 2", kind: "vent", face: "top", x: 5.6, y: 0.35, z: 2.75, w: 0.35, h: 0.35 },
        { name: "rooflight 1", kind: "rooflight", face: "top", x: 3.4, y: 0, z: 2.75, w: 0.7, h: 0.5 },
        { name: "door", kind: "door", face: "left", x: 4.95, y: -1.15, z: 1.6, w: 0.65, h: 1.85 },
        { name: "window 1", kind: "window", face: "left", x: 1.2, y: -1.15, z: 1.85, w: 1.1, h: 0.6 },
        { name: "window 2", kind: "window", face: "left", x: 3.1, y: -1.15, z: 1.85, w: 1.4, h: 0.6 },
        { name: "window 3", kind: "window", face: "right", x: 2.0, y: 1.15, z: 1.85, w: 1.4, h: 0.6 },
        { name: "hatch 1", kind: "hatch", face: "right", x: 5.4, y: 1.15, z: 1.0, w: 0.6, h: 0.5 },
        { name: "window 4", kind: "window", face: "front", x: 0, y: 0, z: 1.9, w: 1.5, h: 0.55 },
        { name: "window 5", kind: "window", face: "rear", x: 6.4, y: 0, z: 1.9, w: 1.3, h: 0.55 }]
    property var placeNames: ["wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R", "vent 1", "vent 2", "rooflight 1", "door"]
    property int findingCount: findings.count
    property FindingModel findings: FindingModel {}
    property string barTitle: "Start a walk"
    property string barDetail: "before the road, 14 lines, about 9 minutes"
    property bool walkOpen: false
    property var kinds: [
        { slug: "before_road", name: "Before the road", about: "What is looked at every time it moves: inside, one lap, hitch, lamps, chocks last.", lines: 14, minutes: 9, suggested: true },
        { slug: "full_round", name: "Full round", about: "Every point this rig has, one lap from the nose, then roof, underneath, inside and weights.", lines: 24, minutes: 25, suggested: false, holdsLeftOut: "Left out, on the hold list: Wheel nuts, Breakaway switch.", leftOut: "Leaves out 114 of 138 points: Roof membrane, Window seals, Front cap seam, Wheel bearings, Brakes, Springs and 108 more." },
        { slug: "at_stop", name: "At a stop", about: "First after about 40 km (25 mi), then every 160 to 240 km (100 to 150 mi) or 2 hours.", lines: 1, minutes: 1, suggested: false },
        { slug: "on_arrival", name: "On arrival", about: "After parking and chocking: wheels, steadies, mains, gas, water and alarms before the first night.", lines: 11, minutes: 8, suggested: false }]
    property var mendActions: [{ slug: "replace", word: "replace" }, { slug: "reseal", word: "seal again" }, { slug: "retorque", word: "torque again" }, { slug: "clean", word: "clean" }, { slug: "lubricate", word: "lubricate" }, { slug: "repair", word: "repair" }]
    property var mended: []
    property var fittings: [{ slug: "lp_gas", name: "LP gas" }, { slug: "mains", name: "mains power" }, { slug: "house_battery", name: "house battery" }, { slug: "awning", name: "awning" }]
    function usualFittings(kind: string, practice: string): var { return ["lp_gas", "awning"] }
    readonly property var lengths: ({ travel_trailer: 6.4, fifth_wheel: 9.6, folding_trailer: 3.6, teardrop: 3, truck_camper: 4.6, motorhome: 7, van: 6 })
    // as the core would, roughly: what is typed in metres, the usual elsewhere
    function draft(map: var, own: bool): var {
        const kind = map.kind ?? "travel_trailer", usual = lengths[kind] ?? 6.4, typed = parseFloat(map.length ?? ""), length = typed > 1.5 && typed < 20 ? typed : usual;
        const low = kind === "folding_trailer" ? 0.95 : kind === "teardrop" ? 1.25 : 2.2, count = kind === "truck_camper" ? 0 : Number(map.axle_count ?? 2);
        return { kindSlug: kind, practice: "australia_new_zealand", hitch: kind === "fifth_wheel" ? "fifth_wheel" : "ball", fitted: [], bodyLength: length, bodyWidth: 2.3, bodyHeight: low, floorHeight: 0.55, hitchLength: /trailer|teardrop/.test(kind) ? 1.2 : 0,
            axles: [0.55 * length, 0.55 * length + 0.85, 0.55 * length + 1.7].slice(0, count), openings: own ? openings : [], kerbLeft: true, axleCount: count,
            usual: { length: usual + " m", width: "2.3 m", height: low + " m", floor_height: "0.55 m", hitch_length: "1.2 m", axles: ["3.5 m", "4.35 m"], roof: "metal" } };
    }
    function formTexts(): var {
        return { name: name, kind: root.drawn.kindSlug, practice: "north_america", length: "6.4 m", width: "2.3 m", height: "2.2 m", floor_height: "0.55 m", hitch_length: "1.25 m", axle_count: "2",
            axles: ["3.3 m", "4.15 m"], roof: "membrane", roof_walk: "no", fittings: ["lp_gas", "awning"], gross: "2500 kg", placard: "450 kPa", tire_size: "205/75 R14 105", load_range: "D", max_load: "925 kg", max_pressure: "450 kPa", torque: "120 N·m" };
    }
    property bool fresh: false
    property int budget: 25
    function metres(typed: string): real { return parseFloat(typed) }
    function setBudget(minutes: int) { budget = minutes }
    property var figures: [
        { title: "Worst", brief: "88", text: "Belly pan sheet and fasteners: 88, between 80 and 92", why: ["Grade 4 of 5.", "It matters on the road.", "The chance that it fails before then is taken as 6 %."] },
        { title: "Chance that one serious item fails before the next look", brief: "12 %", text: "12 %, between 7 and 19 %", why: ["Of 41 items on which the road or fire hangs.", "Each counts with its own chance, as if none knew of another."] },
        { title: "Looked at, by weight", brief: "71 %", text: "71 % of what weighs", why: ["What weighs is how much hangs on a point times how likely it fails."] }]
    property var holds: [
        { title: "Belly pan sheet and fasteners", why: "A sheet hangs in the road.", forbids: "do not move it", findingId: "f2", point: "belly-pan-sheet", acceptable: false, accepted: "" },
        { title: "Wheel nuts", why: "It is on the hold list and could not be looked at: the tool is not here.", forbids: "do not move it", findingId: "", point: "wheel-nuts", acceptable: true, accepted: "" },
        { title: "Breakaway switch", why: "It is on the hold list and could not be looked at: too dark.", forbids: "do not move it", findingId: "", point: "breakaway", acceptable: true, accepted: "accepted by A. on 12 March, 08:10" }]
    property var hiddenPoints: ["Spare wheel, hidden by A., 3 May 2026"]
    property var acceptedNow: []
    function accept(point: string, because: string, knowing: string) { acceptedNow = acceptedNow.concat([[point, because, knowing]]) }

    function placeTitle(named: string): string { return named }
    function faceName(slug: string): string { return slug === "top" ? "roof" : slug === "left" ? "kerb side" : slug }
    function finding(id: string): var {
        if (id === "" && findings.count === 0)
            return ({});
        return { id: id === "" ? "f2" : id, title: "Belly pan sheet and fasteners", place: "underside, 4.5 m from the front, 0.6 m to the kerb side", defect: "loose", status: "open", statusText: "open since 12 January",
            callText: "do not move it", kind: "hold", why: ["Grade 4 of 5, grew from grade 3 in 59 days.", "412 km of gravel since the last look shook it like 1 310 km."],
            looks: [{ date: "12 March", by: "A.", gradeText: "fastener gone, sheet hangs", extentText: "14 mm gap", note: "two more working loose", photos: ["b", "c"] },
                { date: "12 January", by: "A.", gradeText: "fastener loose", extentText: "6 mm gap", note: "", photos: ["a"] }],
            mends: [{ date: "13 January", by: "A.", what: "rivet pressed home", parts: "none", cost: "" }],
            photos: [{ hash: "a", caption: "gap", date: "12 January", place: "" }] };
    }
    function mend(findingIds: var, mend: var) { mended = mended.concat([{ ids: findingIds, mend: mend }]) }

    Component.onCompleted: findings.rows = [
        ["f2", "hold", "Belly pan, third rivet aft of the rear axle", "loose, two more working; 14 mm gap", "underside, 4.5 m from the front", "left", 4.5, -1.1, 0.56, "do not move it", 88],
        ["f4", "mend", "Lap sealant, middle vent", "crack 60 mm, was 20", "roof, 3.4 m from the front", "top", 3.55, 0.2, 2.75, "mend soon, 64", 64],
        ["f3", "mend", "Entry door latch", "second position only", "kerb side, 5.2 m from the front", "left", 5.2, -1.15, 1.5, "mend soon, 55", 55],
        ["f1", "watch", "Front cap seam", "hairline, 90 mm", "kerb side, 0.1 m from the front", "left", 0.12, -1.15, 2.05, "watch, 31", 31],
        ["f5", "watch", "Rear marker lamp", "lens crazed", "", "", NaN, NaN, NaN, "watch, 12", 12]
    ].map((f, i) => ({ findingId: f[0], number: i + 1, kind: f[1], title: f[2], detail: f[3], place: f[4], face: f[5],
        x: f[6], y: f[7], z: f[8], callText: f[9], concern: f[10], photoCount: 1 }))
}
