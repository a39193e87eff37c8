// SPDX-License-Identifier: Apache-2.0
// Where on earth, as the receiver last said.
import QtQml

QtObject {
    property bool has: true
    property string words: "44.27 S, 170.10 E, 640 m, ±6 m"
    property string source: "receiver"
    function type(latitude: string, longitude: string): bool { words = latitude + ", " + longitude; return true }
}
