// SPDX-License-Identifier: Apache-2.0
// Never without a picture: a field that is wrong leaves the usual measure in its place.
#include "rig_draft.hpp"

#include "rig/names.hpp"
#include "rig/usual_measures.hpp"
#include "rig_form.hpp"

namespace snugwalk {

QVariantList openingList(const Rig &rig)
{
    QVariantList list;
    for (const Opening &o : rig.openings) {
        list << QVariantMap{{QStringLiteral("name"), Voice::text(o.name)},
                            {QStringLiteral("kind"), Voice::text(slug(o.kind))},
                            {QStringLiteral("face"), Voice::text(slug(o.face))},
                            {QStringLiteral("x"), o.at.aft.si()},
                            {QStringLiteral("y"), o.at.right.si()},
                            {QStringLiteral("z"), o.at.up.si()},
                            {QStringLiteral("w"), o.width.si()},
                            {QStringLiteral("h"), o.height.si()}};
    }
    return list;
}

QVariantMap drawnRig(const Rig &rig)
{
    QVariantList axles;
    for (const Length &axle : rig.measures.axles)
        axles << axle.si();
    return {{QStringLiteral("kindSlug"), Voice::text(slug(rig.kind))},
            {QStringLiteral("bodyLength"), rig.measures.length.si()},
            {QStringLiteral("bodyWidth"), rig.measures.width.si()},
            {QStringLiteral("bodyHeight"), rig.measures.height.si()},
            {QStringLiteral("floorHeight"), rig.measures.floorHeight.si()},
            {QStringLiteral("hitchLength"), rig.measures.hitchLength.si()},
            {QStringLiteral("axles"), axles},
            {QStringLiteral("openings"), openingList(rig)},
            {QStringLiteral("kerbLeft"), kerbIsLeft(rig)}};
}

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
