// SPDX-License-Identifier: Apache-2.0
// Reads core/catalogue/data.
#include "support/real_catalogue.hpp"

#include <algorithm>
#include <filesystem>
#include <map>
#include <string_view>
#include <vector>

#include "support/temp_folder.hpp"

namespace snugwalk::test {
namespace {

const std::filesystem::path folder = SNUGWALK_SOURCE_DIR "/core/catalogue/data";

CatalogueBytes readAll()
{
    std::vector<std::filesystem::path> files;
    for (const auto &item : std::filesystem::directory_iterator(folder / "points"))
        files.push_back(item.path());
    std::sort(files.begin(), files.end());
    CatalogueBytes bytes{
        {}, slurp(folder / "sets.json"), slurp(folder / "sources.json"), slurp(folder / "holds.json")};
    for (const auto &file : files)
        bytes.points.push_back(slurp(file));
    return bytes;
}

} // namespace

Result<Catalogue> CatalogueBytes::load() const
{
    return Catalogue::load({points.begin(), points.end()}, sets, sources, holds);
}

const CatalogueBytes &realCatalogueBytes()
{
    static const CatalogueBytes bytes = readAll();
    return bytes;
}

const Catalogue &realCatalogue()
{
    static const Catalogue catalogue = realCatalogueBytes().load().value();
    return catalogue;
}

const Texts &realTexts(const std::string &language)
{
    static std::map<std::string, Texts> loaded;
    const auto found = loaded.find(language);
    if (found != loaded.end())
        return found->second;
    const std::string words = slurp(folder / "texts" / (language + ".json"));
    std::vector<std::string> zones;
    for (const auto &file : std::filesystem::directory_iterator(folder / "texts" / language))
        zones.push_back(slurp(file.path()));
    const std::vector<std::string_view> views(zones.begin(), zones.end());
    return loaded.emplace(language, Texts::load(words, views).value()).first->second;
}

} // namespace snugwalk::test
