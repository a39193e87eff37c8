// SPDX-License-Identifier: Apache-2.0
// The WebDAV store by itself, for scripts that hold the servers: one line of JSON a call, exit code 0 or as
// the command line has it.
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>

#include "base/value.hpp"
#include "keys/hash.hpp"
#include "webdav/webdav_store.hpp"

using namespace snugwalk;

namespace {

std::string slurp(const std::filesystem::path &path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

int answer(const Value::Map &members)
{
    std::cout << toJson(members, false) << std::endl;
    return 0;
}

int fail(const Error &error)
{
    answer({{"ok", false}, {"code", codeName(error.code)}, {"what", error.what}, {"act", error.act}});
    return exitCode(error.code);
}

// Every file below a folder under its relative name; stops at the first error.
int publishAll(Store &store, const std::filesystem::path &folder)
{
    std::map<std::string, std::filesystem::path> files;
    for (const auto &item : std::filesystem::recursive_directory_iterator(folder)) {
        if (item.is_regular_file())
            files[item.path().lexically_relative(folder).generic_string()] = item.path();
    }
    int count = 0;
    for (const auto &[name, path] : files) {
        const Status status = store.publish(name, slurp(path));
        if (!status)
            return fail(status.error());
        std::cerr << "published " << name << std::endl;
        ++count;
    }
    return answer({{"ok", true}, {"published", count}});
}

Status fetchFolder(Store &store, const std::string &folder, const std::filesystem::path &into, int &count)
{
    const auto files = store.list(folder);
    if (!files)
        return files.error();
    for (const StoreFile &file : *files) {
        const std::string name = folder.empty() ? file.name : folder + "/" + file.name;
        if (name.ends_with('/')) {
            SNUG_TRY(fetchFolder(store, name.substr(0, name.size() - 1), into, count));
            continue;
        }
        if (std::filesystem::exists(into / name)) { // of a round before
            ++count;
            continue;
        }
        const auto bytes = store.read(name, 64 << 20);
        if (!bytes)
            return bytes.error();
        std::filesystem::create_directories((into / name).parent_path());
        std::ofstream(into / name, std::ios::binary) << *bytes;
        ++count;
    }
    return done();
}

int run(WebdavStore &store, const std::vector<std::string> &words)
{
    const std::string &command = words[0];
    if (command == "probe") {
        const Status status = store.probe();
        return status ? answer({{"ok", true}}) : fail(status.error());
    }
    if (command == "publish") {
        const Status status = store.publish(words.at(1), slurp(words.at(2)));
        return status ? answer({{"ok", true}}) : fail(status.error());
    }
    if (command == "read") {
        const auto bytes = store.read(words.at(1), std::stoll(words.at(2)));
        return bytes ? answer({{"ok", true}, {"size", bytes->size()}, {"hash", blake2b(*bytes).text()}})
                     : fail(bytes.error());
    }
    if (command == "list") {
        const auto files = store.list(words.size() > 1 ? words[1] : "");
        if (!files)
            return fail(files.error());
        Value::List names;
        for (const StoreFile &file : *files)
            names.emplace_back(Value::List{file.name, file.size});
        return answer({{"ok", true}, {"files", names}});
    }
    if (command == "publish-all")
        return publishAll(store, words.at(1));
    if (command == "fetch-all") {
        int count = 0;
        const Status status = fetchFolder(store, "", words.at(1), count);
        return status ? answer({{"ok", true}, {"fetched", count}}) : fail(status.error());
    }
    return 2;
}

} // namespace

int main(int argc, char **argv)
{
    std::vector<std::string> words(argv + 1, argv + argc);
    WebdavSettings settings;
    settings.longestWait = std::chrono::milliseconds(1);
    int pauses = 0;
    settings.wait = [&](std::chrono::milliseconds) { return ++pauses < 1000; }; // no waiting in a test
    while (words.size() > 1 && words.front().starts_with("--")) {
        const std::string option = words[0];
        const std::string value = words[1];
        words.erase(words.begin(), words.begin() + 2);
        if (option == "--address")
            settings.address = value;
        else if (option == "--authority")
            settings.authority = slurp(value);
        else if (option == "--user")
            settings.user = value;
        else if (option == "--password")
            settings.password = value;
        else if (option == "--idle")
            settings.idle = std::chrono::milliseconds(std::stoi(value));
        else if (option == "--total")
            settings.total = std::chrono::milliseconds(std::stoi(value));
        else if (option == "--tries")
            settings.tries = std::stoi(value);
        else
            return 2;
    }
    if (words.empty())
        return 2;
    const auto store = WebdavStore::open(settings);
    if (!store)
        return fail(store.error());
    return run(**store, words);
}
