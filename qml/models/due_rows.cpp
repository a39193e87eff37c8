// SPDX-License-Identifier: Apache-2.0
// Roles of the due list.
#include "due_model.hpp"

namespace snugwalk {

DueRowModel::DueRowModel(QObject *parent)
    : RowModel({{"point", [](const DueRow &r) { return QVariant(r.key); }},
                {"title", [](const DueRow &r) { return QVariant(r.title); }},
                {"zone", [](const DueRow &r) { return QVariant(r.zone); }},
                {"early", [](const DueRow &r) { return QVariant(r.early); }},
                {"likely", [](const DueRow &r) { return QVariant(r.likely); }},
                {"late", [](const DueRow &r) { return QVariant(r.late); }},
                {"alert", [](const DueRow &r) { return QVariant(r.alert); }},
                {"nominal", [](const DueRow &r) { return QVariant(r.nominal); }},
                {"earlyText", [](const DueRow &r) { return QVariant(r.earlyText); }},
                {"likelyText", [](const DueRow &r) { return QVariant(r.likelyText); }},
                {"lateText", [](const DueRow &r) { return QVariant(r.lateText); }},
                {"when", [](const DueRow &r) { return QVariant(r.when); }},
                {"reason", [](const DueRow &r) { return QVariant(r.reason); }},
                {"why", [](const DueRow &r) { return QVariant(r.why); }},
                {"pastDue", [](const DueRow &r) { return QVariant(r.pastDue); }},
                {"kind", [](const DueRow &r) { return QVariant(r.kind); }},
                {"basis", [](const DueRow &r) { return QVariant(r.basis); }},
                {"severity", [](const DueRow &r) { return QVariant(r.severity); }}},
               parent)
{}

} // namespace snugwalk
