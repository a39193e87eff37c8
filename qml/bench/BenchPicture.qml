// SPDX-License-Identifier: Apache-2.0
// The picture that a question needs, by its kind; an unknown kind draws nothing.
pragma ComponentBehavior: Bound
import QtQuick
import Snugwalk.Style
import Snugwalk.Controls

// A plain column: a layout keeps the height that words had while it was narrow.
Column {
    id: root

    /// See bench_pictures.hpp and wheel_map.hpp.
    required property var picture
    signal trendAsked(string point)

    spacing: 6

    Rule { width: root.width }
    Once { wanted: root.picture.kind === "star"; StarPicture { picture: root.picture; width: root.width } }
    Once { wanted: root.picture.kind === "weigh"; WeighPicture { picture: root.picture; width: root.width } }
    Once { wanted: root.picture.kind === "bead"; BeadPicture { picture: root.picture; width: root.width } }
    Once { wanted: root.picture.kind === "wheels"; WheelMap { map: root.picture; width: root.width; onTrendAsked: point => root.trendAsked(point) } }
}
