// SPDX-License-Identifier: Apache-2.0
// What the app is made from: main gives the machine's own, tests give theirs.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <QImage>
#include <QString>

#include "catalogue/catalogue.hpp"
#include "catalogue/supplies.hpp"
#include "catalogue/texts.hpp"
#include "logbook/image_codec.hpp"
#include "logbook/logbook.hpp"
#include "preferences.hpp"
#include "round/world.hpp"
#include "start/book_places.hpp"

namespace snugwalk {

class CameraSource;
class FeedbackSource;
class PositionSource;
class ReportDesk;
class SyncPlaces;

/// Everything pointed at outlives the session.
struct AppParts {
    const Catalogue *catalogue = nullptr;
    const SupplyList *supplies = nullptr;
    std::vector<std::pair<std::string, std::string>> languages; ///< to choose from: ISO 639-1, its own name
    std::function<Result<Texts>(std::string_view language)> texts;
    std::function<Result<Logbook>()> openBook; ///< called once by each thread that needs it
    /// Called on the worker's thread, for each reading; gives the same each time. Not set: no weather known.
    std::function<std::shared_ptr<const World>()> world;
    const ImageCodec *codec = nullptr; ///< used on the worker's thread only
    const Clock *clock = nullptr;
    PositionSource *position = nullptr;  ///< none when null
    CameraSource *camera = nullptr;      ///< none when null
    FeedbackSource *feedback = nullptr;  ///< none when null
    SyncPlaces *places = nullptr;        ///< stores; none when null
    const ReportDesk *reports = nullptr; ///< none when null
    /// A QR picture of some bytes, a row a text, 1 is dark; empty when they do not go into one. Not set: no
    /// pictures, words only.
    std::function<std::vector<std::string>(std::string_view bytes)> qrRows;
    /// The bytes of a QR code in a picture, by any thread; nothing without one. Not set: words only.
    std::function<std::optional<std::string>(const QImage &)> qrBytes;
    std::filesystem::path takenFolder;                  ///< where photos wait for their marks
    Preferences preferences;                            ///< as read before the first window
    QString preferencesFile;                            ///< empty: nothing is kept between runs
    std::function<void(const QString &language)> speak; ///< puts the translator of a language in place
    BookPlaces books;                                   ///< this logbook among those of the device
    bool bookMissing = false; ///< no file is made before there is something to write
    bool still = false;       ///< nothing moves or blinks: screenshots and tests
};

} // namespace snugwalk
