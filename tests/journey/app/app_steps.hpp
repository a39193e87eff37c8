// SPDX-License-Identifier: Apache-2.0
// Steps that the journeys through the app share.
#pragma once

#include <QString>
#include <QVariant>

#include "app_life.hpp"
#include "walk_model.hpp"

class QAbstractItemModel;

namespace snugwalk::journey {

/// A line to the driver, at once.
void say(const QString &line);
[[nodiscard]] QVariant cell(const QAbstractItemModel &model, int row, const char *role);
[[nodiscard]] WalkModel &walkOf(Life &life);
[[nodiscard]] int lineTitled(const WalkModel &walk, const QString &title);

/// From the home to the first line; `kind` is how its name in the list of walks begins.
WalkModel &startWalk(Life &life, const QString &kind);
/// Cautions come in full first; a person reads them and goes on.
void readCautions(Life &life);
/// By the list of all lines.
void goToLine(Life &life, const QString &title);
/// Taps what writes a mark and waits until the disk has it.
void writeDown(Life &life, const QString &word);
/// Passes the line at hand, telling of each known finding that it is still there.
void passLine(Life &life);
/// From a walk with lines left to the home.
void finishWalk(Life &life);
/// From anywhere back to one of the four places at the bottom edge.
void goHomeTo(Life &life, const QString &word);
/// From the home: a report chosen by its name and saved in a form. The driver gives the file's name by that
/// of the form; the page is pictured before.
void saveReport(Life &life, const QString &kind, const QString &form, const QString &shot);
/// The report at hand in one form more; `given` is the driver's name for the file, the form's when empty.
void saveMore(Life &life, const QString &form, const QString &given = {});
/// Answers the dialog for files that is open in place of a person, whose dialog is the system's: what asked
/// is told the file.
void chooseFile(Life &life, const QString &file);
void chooseFiles(Life &life, const QStringList &files);

} // namespace snugwalk::journey
