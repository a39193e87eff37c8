// SPDX-License-Identifier: Apache-2.0
// Numbers as the chosen language writes them. Sentences and dates arrive written by the models.
pragma Singleton
import QtQuick

QtObject {
    id: root

    /// ISO 639-1, one of the session's languages.
    property string language: "en"
    /// "si" or "us".
    property string units: "si"
    readonly property var locale: Qt.locale(root.language)

    /// The parts that say something, one after another.
    function join(parts: var, between: string): string {
        return parts.filter(one => one).join(between);
    }

    function number(value: real, decimals: int): string {
        return Number(value).toLocaleString(root.locale, "f", decimals);
    }

    /// A length in metres as a drawing writes it: "6.4 m" or "21.0 ft" (1 ft = 0.3048 m exactly).
    function length(metres: real): string {
        const us = root.units === "us";
        return root.number(us ? metres / 0.3048 : metres, 1) + (us ? " ft" : " m");
    }
}
