// SPDX-License-Identifier: Apache-2.0
// manifest.json out and in.
#include "exchange/manifest.hpp"

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view formatName = "snugwalk-export";
constexpr std::int64_t formatVersion = 1;

Error broken(const char *what)
{
    return {Errc::InvalidInput, std::string("the manifest ") + what, "manifest.json",
            "fetch the file again from where it was made"};
}

std::optional<ForeignStream> readStream(const Value &v)
{
    const auto name = fromHex(v["stream"].asString().value_or(""));
    const bool partial = v["partial"].asBool().value_or(false);
    const auto key = partial && v["public_key"].isNull() ? std::string(32, '\0')
                                                         : fromHex(v["public_key"].asString().value_or(""));
    const auto label = v["label"].asString();
    if (!name || !key || !label)
        return std::nullopt;
    const Result<StreamId> id = streamFromBytes(*name);
    return id ? std::optional(ForeignStream{*id, *key, *label, partial}) : std::nullopt;
}

std::optional<ManifestFile> readFileRow(const Value &v)
{
    const auto name = v["name"].asString();
    const auto size = v["size"].asInt();
    const auto hash = Hash::parse(v["blake2b_256"].asString().value_or(""));
    if (!name || !size || *size < 0 || !hash)
        return std::nullopt;
    return ManifestFile{*name, *size, *hash};
}

} // namespace

std::string manifestText(const Manifest &manifest)
{
    Value::List streams;
    for (const ForeignStream &stream : manifest.streams)
        streams.emplace_back(
            Value::Map{{"stream", toHex(stream.name.bytes())},
                       {"public_key", stream.isOnlyNamed() ? Value() : Value(toHex(stream.publicKey))},
                       {"partial", stream.partial},
                       {"label", stream.label}});
    Value::List files;
    for (const ManifestFile &file : manifest.files)
        files.emplace_back(
            Value::Map{{"name", file.name}, {"size", file.size}, {"blake2b_256", file.hash.text()}});
    Value::List missing;
    for (const Hash &hash : manifest.missingPhotos)
        missing.emplace_back(hash.text());
    return toJson(Value::Map{{"format", formatName},
                             {"version", formatVersion},
                             {"made", manifest.made},
                             {"rig", manifest.rig.isNull() ? Value() : Value(manifest.rig.text())},
                             {"entries", manifest.entries},
                             {"streams", std::move(streams)},
                             {"files", std::move(files)},
                             {"missing_photos", std::move(missing)}},
                  true) +
           "\n";
}

Result<Manifest> readManifest(std::string_view text)
{
    const Result<Value> parsed = parseJson(text);
    if (!parsed)
        return broken("cannot be read");
    const Value &v = *parsed;
    if (v["format"].asString() != formatName)
        return broken("is not one of ours");
    if (v["version"].asInt().value_or(0) > formatVersion)
        return Error{Errc::Unsupported, "an export of a newer version", "manifest.json",
                     "update the program on this machine"};
    const auto made = v["made"].asString();
    const auto entries = v["entries"].asInt();
    const auto rig = v["rig"].isNull() ? Id{} : Id::parse(v["rig"].asString().value_or(""));
    const bool isWhole = v["streams"].isList() && v["files"].isList() && v["missing_photos"].isList();
    if (v["version"].asInt() != formatVersion || !made || !entries || !rig || !isWhole)
        return broken("lacks a member");
    Manifest manifest{*made, *rig, *entries, {}, {}, {}};
    for (const Value &item : v["streams"].list()) {
        auto stream = readStream(item);
        if (!stream)
            return broken("has a stream that cannot be read");
        manifest.streams.push_back(std::move(*stream));
    }
    for (const Value &item : v["files"].list()) {
        auto file = readFileRow(item);
        if (!file)
            return broken("has a file that cannot be read");
        manifest.files.push_back(std::move(*file));
    }
    for (const Value &item : v["missing_photos"].list()) {
        const auto hash = Hash::parse(item.asString().value_or(""));
        if (!hash)
            return broken("names a photo that is none");
        manifest.missingPhotos.push_back(*hash);
    }
    return manifest;
}

} // namespace snugwalk
