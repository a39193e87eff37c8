// SPDX-License-Identifier: Apache-2.0
// The folder of photos: originals byte for byte, named by what they hold, each with a thumbnail.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "keys/hash.hpp"
#include "logbook/image_codec.hpp"
#include "logbook/photo_facts.hpp"

namespace snugwalk {

/// `<folder>/<hh>/<hash>.jpg` or `.png`, and `<hash>.thumb.jpg` beside it; hh = the hash's first two digits.
class PhotoStore {
public:
    explicit PhotoStore(std::filesystem::path folder) : m_folder(std::move(folder)) {}

    /// Decodes the photo in full before anything is written; what is refused leaves nothing behind.
    /// The same photo again is fine, and mends an original that was damaged on the disk.
    /// \returns the errors of `readPhotoFacts`, of the codec, or `Io`.
    [[nodiscard]] Result<PhotoFacts> add(std::string_view bytes, const ImageCodec &codec);

    /// \returns `NotFound` or `Io`; the bytes are not hashed again, see `verify`.
    [[nodiscard]] Result<std::string> original(const Hash &hash) const;
    [[nodiscard]] Result<std::string> thumbnail(const Hash &hash) const;

    /// Keeps an original that came from elsewhere; its bytes must hash to the name and be a whole JPEG or
    /// PNG. \returns `Corrupt`, the errors of `readPhotoParts`, `Io`.
    [[nodiscard]] Status keepOriginal(const Hash &hash, std::string_view bytes);
    /// Keeps a thumbnail whose original may still be elsewhere; at most 32 KiB of JPEG. Nothing proves that
    /// it shows that photo but the word of who sent it.
    [[nodiscard]] Status keepThumbnail(const Hash &hash, std::string_view bytes);
    [[nodiscard]] bool hasThumbnail(const Hash &hash) const;

    /// Hashes the original again: `Corrupt` when it is another, `NotFound` when it is gone.
    [[nodiscard]] Status verify(const Hash &hash) const;

    /// Whether an original of that name is there; its bytes are not looked at.
    [[nodiscard]] Status exists(const Hash &hash) const;

    /// Files that belong to nothing: parts left by a power cut, thumbnails without an original. Sorted.
    [[nodiscard]] std::vector<std::filesystem::path> strays() const;

private:
    [[nodiscard]] std::filesystem::path pathOf(const Hash &hash, std::string_view ending) const;
    [[nodiscard]] Status keep(const PhotoFacts &facts, std::string_view bytes, std::string_view thumb);

    std::filesystem::path m_folder;
};

} // namespace snugwalk
