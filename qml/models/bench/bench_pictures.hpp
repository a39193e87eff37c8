// SPDX-License-Identifier: Apache-2.0
// What there is to draw beside an answer: the star of the nuts, the scale's pads, a bead's section.
#pragma once

#include <QVariantMap>

#include "bench/ask/typed.hpp"
#include "voice.hpp"

namespace snugwalk {

/// Each of these pictures that the answer has something for:
/// {kind: "star", studs, sequence: [from 1, clockwise from the top]};
/// {kind: "weigh", pads: [{name, solo, coupled, bars}], figure, value, spoken};
/// {kind: "bead", shape, width, height, aspect (height over width), widthText, heightText, lengthText,
/// spoken}. Texts are in the person's units; empty where nothing is typed.
[[nodiscard]] QVariantList benchPictures(const Voice &voice, const BenchQuestion &question,
                                         const BenchTexts &texts, CivilDate today, const BenchAnswer *answer);

} // namespace snugwalk
