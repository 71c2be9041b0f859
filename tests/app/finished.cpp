#include "finished.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <sys/wait.h>

namespace frontwright::testing {

namespace fs = std::filesystem;

namespace {

std::string quoted(const std::string& text) {
    std::string result = "'";
    for (const char c : text)
        result += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return result + "'";
}

} // namespace

Folder::Folder() {
    std::string name = (fs::temp_directory_path() / "frontwright-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw fs::filesystem_error("no folder for a test", std::error_code());
    m_path = name;
}

Folder::~Folder() {
    std::error_code ignored;
    fs::remove_all(m_path, ignored);
}

std::string Folder::with(const std::string& name, const std::string& content) const {
    std::ofstream(path(name), std::ios::binary) << content;
    return path(name).string();
}

std::vector<std::string> Folder::names() const {
    std::vector<std::string> result;
    for (const auto& entry : fs::recursive_directory_iterator(m_path))
        result.push_back(fs::relative(entry.path(), m_path).string());
    std::sort(result.begin(), result.end());
    return result;
}

Outcome ran(const Folder& folder, const std::vector<std::string>& arguments) {
    const Folder talk;
    std::string line = "cd " + quoted(folder.path("").string()) +
                       " && exec env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM "
                       "-u XDG_RUNTIME_DIR " +
                       quoted(FRONTWRIGHT_PROGRAM);
    for (const std::string& argument : arguments)
        line += " " + quoted(argument);
    line += " >" + quoted(talk.path("out").string()) + " 2>" + quoted(talk.path("err").string()) +
            " </dev/null";
    const int status = std::system(line.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, bytesOf(talk.path("out")),
            bytesOf(talk.path("err"))};
}

std::string bytesOf(const fs::path& file) {
    std::ifstream stream(file, std::ios::binary);
    EXPECT_TRUE(stream) << file;
    std::ostringstream content;
    content << stream.rdbuf();
    return content.str();
}

std::vector<std::string> samplePaths() {
    std::vector<std::string> files;
    for (const auto& entry :
         fs::recursive_directory_iterator(fs::path(FRONTWRIGHT_SOURCE_DIR) / "samples"))
        if (entry.path().extension() == ".frontwright")
            files.push_back(entry.path().string());
    std::sort(files.begin(), files.end());
    return files;
}

std::string sample(const std::string& name) {
    return (fs::path(FRONTWRIGHT_SOURCE_DIR) / "samples" / name / (name + ".frontwright")).string();
}

} // namespace frontwright::testing
