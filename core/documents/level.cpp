#include "core/documents/level.h"

namespace frontwright::documents {

namespace {

void appendStep(std::string& to, std::string_view name) {
    for (const char c : name) {
        if (c == '~')
            to += "~0";
        else if (c == '/')
            to += "~1";
        else
            to += c;
    }
}

} // namespace

std::string keyPrefix(const Level* level) {
    if (level == nullptr)
        return {};
    std::string prefix = keyPrefix(level->up);
    appendStep(prefix, level->name);
    return prefix + '/';
}

std::string unknownKey(const Level* level, std::string_view name) {
    std::string key = keyPrefix(level);
    appendStep(key, name);
    return key;
}

std::string nameOfKey(std::string_view lastStep) {
    std::string name;
    for (std::size_t i = 0; i < lastStep.size(); ++i) {
        if (lastStep[i] != '~')
            name += lastStep[i];
        else if (++i < lastStep.size())
            name += lastStep[i] == '1' ? '/' : '~';
    }
    return name;
}

} // namespace frontwright::documents
