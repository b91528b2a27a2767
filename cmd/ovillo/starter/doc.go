// Package starter holds the sources that `ovillo new` begins a pattern with: for each kind of piece a small one that is whole,
// in English and in Spanish, with remarks that say what to change first. Both say the same pattern.
//
// In the files @name, @title_en, @title_es, @month and @file stand for what [Pattern] says. All figures are made up.
package starter
