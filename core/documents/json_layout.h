#pragma once

#include <string>
#include <string_view>

namespace frontwright::documents {

/// The one way in which our documents lie on the page, for any valid JSON text: two spaces a level;
/// what holds no object and fits in 100 columns stays on one line, and so does an object of plain
/// values; everything else has a line for each member. LF, a final newline.
std::string layOutJson(std::string_view json);

} // namespace frontwright::documents
