#pragma once

#include "core/drawings/lettering.h"
#include "core/plan/plan.h"
#include "core/sheets/sheets.h"
#include "tests/core/plan/small_case.h"

#include <algorithm>
#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

// A small case with its plan and templates, kept in place: a Plan refers into what it is made from.
namespace frontwright::testing {

struct Shop {
    Project project;
    Catalogue catalogue;
    Plan plan;
    std::vector<Template> templates;
};

inline std::unique_ptr<Shop> shopWith(Project project) {
    auto shop = std::make_unique<Shop>();
    shop->project = std::move(project);
    shop->catalogue = smallCatalogue();
    shop->plan = makePlan(shop->project, shop->catalogue).value();
    shop->templates = templates(shop->project, shop->plan, shop->project.style);
    return shop;
}

inline SheetOptions onPaper(std::string_view name, Orientation orientation = Orientation::Portrait,
                            Length overlap = Length::millimetres(10)) {
    SheetOptions options;
    options.paper = paperNamed(name).value();
    options.orientation = orientation;
    options.overlap = overlap;
    options.documentName = "Small case";
    options.revision = "first";
    return options;
}

inline Result<std::vector<Page>> pagesOf(const Shop& shop, const SheetOptions& options) {
    return pages(shop.project, shop.plan, shop.templates, options);
}

/// The same where they are sure to be laid; a value, so that it outlives the Result.
inline std::vector<Page> laid(const Shop& shop, const SheetOptions& options) {
    return pagesOf(shop, options).value();
}

/// The first template of that title; a test that asks for another stops there.
inline const Template& titled(const Shop& shop, std::string_view title) {
    for (const Template& part : shop.templates)
        if (part.title == title)
            return part;
    throw std::runtime_error("no template is called " + std::string(title));
}

inline std::vector<std::string> textsOn(const Page& page) {
    std::vector<std::string> texts;
    for (const Mark& mark : page.drawing.marks)
        if (const auto* text = std::get_if<TextMark>(&mark.shape))
            texts.push_back(text->text);
    return texts;
}
/// One after the other: words may be broken over lines.
inline bool says(const Page& page, std::string_view words) {
    std::string all;
    for (const std::string& text : textsOn(page))
        all += text + " ";
    return all.find(words) != std::string::npos;
}
/// On one line, unbroken.
inline bool saysInOneLine(const Page& page, std::string_view words) {
    const std::vector<std::string> texts = textsOn(page);
    return std::any_of(texts.begin(), texts.end(), [&](const std::string& text) {
        return text.find(words) != std::string::npos;
    });
}
inline bool says(const Template& part, std::string_view words) {
    for (const TemplateLabel& label : part.labels)
        for (const std::string& line : label.lines)
            if (line.find(words) != std::string::npos)
                return true;
    for (const Phrase& line : part.parameters)
        if (line.english().find(words) != std::string::npos)
            return true;
    return false;
}

inline std::vector<PageMark> marksOfKind(const Page& page, std::string_view kind) {
    std::vector<PageMark> marks;
    for (const PageMark& mark : page.marks)
        if (mark.kind == kind)
            marks.push_back(mark);
    return marks;
}

/// What a mark covers on the page, without its line's width. Hatches: their outline.
inline BoxMm coveredBy(const Mark& mark) {
    BoxMm box;
    if (const auto* line = std::get_if<LineMark>(&mark.shape)) {
        box.extend(line->from).extend(line->to);
    } else if (const auto* path = std::get_if<PathMark>(&mark.shape)) {
        for (const PointMm& p : path->points)
            box.extend(p);
    } else if (const auto* circle = std::get_if<CircleMark>(&mark.shape)) {
        const PointMm r(circle->radius, circle->radius);
        box.extend(PointMm(circle->centre - r)).extend(PointMm(circle->centre + r));
    } else if (const auto* hatch = std::get_if<HatchMark>(&mark.shape)) {
        for (const PointMm& p : hatch->outline)
            box.extend(p);
    } else if (const auto* text = std::get_if<TextMark>(&mark.shape)) {
        box = textBox(*text, 1);
    }
    return box;
}

/// Circles of a template by the name of their part; nullptr where there is none.
inline const CircleMark* circleOf(const Template& part, std::string_view name) {
    for (const Mark& mark : part.drawing.marks)
        if (mark.part.name == name)
            if (const auto* circle = std::get_if<CircleMark>(&mark.shape))
                return circle;
    return nullptr;
}

/// Lines of a template by the name of their part; nullptr where there is none.
inline const LineMark* lineOf(const Template& part, std::string_view name) {
    for (const Mark& mark : part.drawing.marks)
        if (mark.part.name == name)
            if (const auto* line = std::get_if<LineMark>(&mark.shape))
                return line;
    return nullptr;
}

} // namespace frontwright::testing
