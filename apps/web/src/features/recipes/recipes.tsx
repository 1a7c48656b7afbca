const Recipes = () => null;

export default Recipes;
