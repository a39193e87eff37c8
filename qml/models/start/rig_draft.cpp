// SPDX-License-Identifier: Apache-2.0
// Never without a picture: a field that is wrong leaves the usual measure in its place.
#include "rig_draft.hpp"

#include "drawn_rig.hpp"
#include "rig/usual_measures.hpp"
#include "rig_form.hpp"

namespace snugwalk {

QVariantMap draftOfForm(const QVariantMap &map, const Rig *openingsOf, const Voice &voice)
{
    QVariantMap wanted = map;
    wanted[QStringLiteral("name")] = QStringLiteral("x"); // a missing name spoils no drawing
    for (const auto &[key, first] : {std::pair("kind", "travel_trailer"), std::pair("practice", "other")}) {
        if (wanted.value(QLatin1String(key)).toString().isEmpty())
            wanted[QLatin1String(key)] = QLatin1String(first);
    }
    RigForm form = readRigForm(wanted, voice.units);
    // each field at fault goes back to the usual, until what is left can be drawn
    for (int tries = 0; tries < 12 && !form.problems.isEmpty(); ++tries) {
        for (const QVariant &problem : form.problems)
            wanted.remove(problem.toMap().value(QStringLiteral("field")).toString());
        form = readRigForm(wanted, voice.units);
    }
    if (!form.problems.isEmpty())
        form.rig = usualRig(form.rig.kind, form.rig.practice);
    if (openingsOf != nullptr)
        form.rig.openings = openingsOf->openings;
    Rig usual = usualRig(form.rig.kind, form.rig.practice);
    usual.measures.axles =
        usualAxles(usual.kind, form.rig.measures.length, static_cast<int>(form.rig.measures.axles.size()));
    QVariantMap drawn = drawnRig(form.rig);
    drawn[QStringLiteral("usual")] = rigFormTexts(usual, voice);
    drawn[QStringLiteral("axleCount")] = static_cast<int>(form.rig.measures.axles.size());
    return drawn;
}

} // namespace snugwalk
